import { shortLimits } from './short/limits.ts';

/** The first of these lines that a headline holds, else the last. */
export function fittingHeadline(line: string, ...shorter: readonly string[]): string {
  const lines = [line, ...shorter];
  return lines.find(({ length }) => length <= shortLimits.headline) ?? lines.at(-1) ?? line;
}
