import { coralsIn } from './corals.ts';
import { goesOn, LEAD } from './goes-on.ts';
import { added, type Change } from './change.ts';
import { numberChanges } from './follow-up-number.ts';
import { hear, type Heard, type Said } from './hear.ts';
import { formIn, raisedBy } from './names.ts';
import { tankVolume } from './tank-volume.ts';

/**
 * The earlier question with what a later sentence names put in: a volume, a compound, a coral or a value in place of the
 * one of its kind, or added where there was none. "raise alk 7.2 to 8.4 in 75 gal with soda ash", "and with baking
 * soda?" -> "raise alk 7.2 to 8.4 in 75 gal with baking soda". A question about another parameter takes only the volume
 * with it: "and calcium 380 to 420" -> "calcium 380 to 420 in 75 gal".
 *
 * undefined where the later one names nothing to put in, or anything that has no place: two questions are never mixed.
 */
export function followedUp(before: string, later: string): string | undefined {
  if (!goesOn(later)) return undefined;
  const [was, now] = [hear(before), hear(later)];
  const [known, named] = [parametersOf(was), parametersOf(now)];
  const isNew = named.some((one) => !known.includes(one));
  if (isNew && known.length > 0) return isLine(was) && isLine(now) ? line(was, now) : ownQuestion(was, now);
  const changes = [compoundChange(was, now), coralChange(was, now), numberChanges(was, now)];
  const all = changes.flatMap((one) => one ?? []);
  if (changes.includes(undefined) || all.length === 0) return undefined;
  const put = all
    .filter(({ start }) => start < was.text.length)
    .sort((a, b) => b.start - a.start)
    .reduce((text, one) => text.slice(0, one.start) + one.put + text.slice(one.end), was.text);
  const atEnd = all.filter(({ start }) => start >= was.text.length).map((one) => one.put);
  return [put, ...atEnd].join('').trim();
}

type Parameter = Said['parameter'];

function parametersOf({ parameters, said }: Heard): readonly Parameter[] {
  return [...new Set([...parameters, ...said.map((one) => one.parameter)])];
}

/** Readings and nothing asked of them. */
function isLine({ said, compounds }: Heard): boolean {
  return compounds.length === 0 && said.length > 0 && said.every(({ role }) => role === 'plain');
}

function line(was: Heard, now: Heard): string {
  return `${was.text} ${now.text.replace(LEAD, '').trim()}`;
}

/** What is asked of another parameter, with the volume of before; undefined for a reading alone. */
function ownQuestion(was: Heard, now: Heard): string | undefined {
  const volume = tankVolume(was);
  const asks = now.said.some(({ role }) => role === 'goal' || role === 'step');
  if (!asks || volume === undefined || tankVolume(now) !== undefined) return undefined;
  return `${now.text
    .replace(LEAD, '')
    .replace(/[?!.\s]+$/, '')
    .trim()} in ${volume.text}`;
}

function compoundChange(was: Heard, now: Heard): readonly Change[] | undefined {
  const known = new Set(was.compounds.map(({ name }) => name));
  const fresh = now.compounds.find(({ name }) => !known.has(name)) ?? now.compounds[0] ?? formIn(now.text);
  if (fresh === undefined) return [];
  const asked = parametersOf(was);
  if (asked.length > 0 && !raisedBy(fresh.name).some((id) => asked.includes(id))) return undefined;
  const last = was.compounds.at(-1);
  return [last === undefined ? added(was, `with ${fresh.name}`) : { ...last, put: fresh.name }];
}

function coralChange(was: Heard, now: Heard): readonly Change[] | undefined {
  const known = new Set(coralsIn(was.text).map(({ name }) => name));
  const fresh = coralsIn(now.text).find(({ name }) => !known.has(name));
  const last = coralsIn(was.text).at(-1);
  if (fresh === undefined) return [];
  if (last === undefined) return undefined;
  const at = was.text.lastIndexOf(last.name);
  return at < 0 ? [] : [{ start: at, end: at + last.name.length, put: fresh.name }];
}
