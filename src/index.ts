/** The companion library's face: the engine rooms, and nothing that needs a browser extension. */

export * from './book/index.ts'
export * from './checkout/index.ts'
export * from './money/index.ts'
export * from './monthend/index.ts'
export * from './plan/index.ts'
