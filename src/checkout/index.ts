export { mayBeCheckout } from './may-be-checkout.ts'
export { readCheckout } from './read-checkout.ts'
export type * from './reading.ts'
