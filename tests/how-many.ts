/** Whether everything is tried: `npm run test:long`. */
export const isLong: boolean = Boolean(process.env.WARMSIDE_LONG);

/**
 * How many random cases a test tries: few every day, the full number in `npm run test:long`. The first ones are the same.
 *
 * @param everyDay - for `npm test`
 * @param long - for `npm run test:long`
 */
export function howMany(everyDay: number, long: number): number {
  return isLong ? long : everyDay;
}
