export { type PaySchedule, payDates } from './pay-dates.ts'
