/**
 * How many random cases a test tries: few every day, the full number in `npm run test:long`. The first ones are the same.
 *
 * @param everyDay - for `npm test`
 * @param long - for `npm run test:long`
 */
export function howMany(everyDay: number, long: number): number {
  return process.env.WARMSIDE_LONG ? long : everyDay;
}
