const DAY_MS = 86_400_000;
/** Older readings say nothing of today, days; own choice. */
export const FRESH_DAYS = 14;

/** Whether a reading still says something of today. */
export function isFresh({ atMs }: { readonly atMs: number }, nowMs: number): boolean {
  return nowMs - atMs <= FRESH_DAYS * DAY_MS;
}
