export { isPlaceOrder, submitsOrder } from './is-place-order.ts'
export { mayBeCheckout } from './may-be-checkout.ts'
export { type ReadOptions, readCheckout } from './read-checkout.ts'
export type * from './reading.ts'
