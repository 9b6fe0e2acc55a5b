/** Tells whether an id is new, remembering the last `most`: an event can arrive twice when a connection is lost. */
export function newIds(most = 1000): (id: string) => boolean {
  const seen = new Set<string>();
  return (id) => {
    if (seen.has(id)) return false;
    seen.add(id);
    const [oldest] = seen;
    if (seen.size > most && oldest !== undefined) seen.delete(oldest);
    return true;
  };
}
