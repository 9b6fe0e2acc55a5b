import type { Case } from './case.ts';

/**
 * Members' questions about schedules, as typed. How often to test is common practice, no source; the clock changes of
 * 2026 are those of the IANA time zone database (United States 8 March, Europe 29 March and 25 October).
 */
export const schedule: Readonly<Record<string, Case>> = {
  E01: {
    asked:
      'every site says smthg different, how often do i test what? 1 yr old mixed reef, some lps few sps, no doser yet',
    values: [],
    says: [
      /temperature\W+a look every day/,
      /salinity\W+weekly/,
      /alkalinity\W+twice a week until its daily use is known, then weekly/,
      /calcium\W+every 1 to 2 weeks/,
      /magnesium\W+monthly/,
      /nitrate\W+weekly/,
      /phosphate\W+weekly/,
      /pH\W+optional/,
      /ammonia\W+only after a death/,
      /common practice/i,
      /remind/i,
    ],
    never: [/everything daily/, /test (?:it )?all every day/],
  },
  E03: {
    asked:
      'clocks go forward this sunday. do i shift my lights? and the bot msgs me at 02:30 to check the ATO, will it still ping',
    nowMs: Date.UTC(2026, 2, 5, 12),
    values: [],
    says: [
      /lights may stay as they are or move with the clock/i,
      /keep the length of the day/,
      /at once does no harm/,
      /still comes, once|comes? once|once/,
    ],
    never: [/fires? twice/, /shift (?:the|your) reminder/],
  },
  E05: {
    asked:
      'want: change filter floss every sat, water change every other sat, trace elements on the saturdays between, test on the 31st every month, clean pumps quarterly, ro filters twice a yr. start 3 jan 2026',
    nowMs: Date.UTC(2026, 0, 1, 12),
    values: [],
    says: [
      /change filter floss\W+every week on Saturday/,
      /water change\W+every 2 weeks on Saturday .*?(?:2026-01-03|3 Jan 2026), .*?(?:2026-01-17|17 Jan 2026), .*?(?:2026-01-31|31 Jan 2026)/,
      /trace elements\W+every 2 weeks on Saturday .*?(?:2026-01-10|10 Jan 2026), .*?(?:2026-01-24|24 Jan 2026), .*?(?:2026-02-07|7 Feb 2026)/,
      /test\W+on the 31st of every month \(the last day of a shorter one\) .*?(?:2026-01-31|31 Jan 2026), .*?(?:2026-02-28|28 Feb 2026), .*?(?:2026-03-31|31 Mar 2026)/,
      /clean pumps\W+every 3 months on the 3rd/,
      /ro filters\W+every 6 months on the 3rd/,
    ],
    never: [/biweekly/],
  },
};
