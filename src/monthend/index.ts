export type * from './statement-line.ts'
