const A_DAY = /\s*(?:\/\s*d(?:ay)?|(?:a|per|each) day|daily)\s*$/i;

/** "10 g a day", "0.6 dKH/day" -> the amount alone, and whether it was said to be daily. */
export function splitADay(text: string): { readonly amount: string; readonly daily: boolean } {
  const amount = text.replace(A_DAY, '');
  return { amount, daily: amount !== text };
}
