import type { CoralEntry } from '../../../core/corals/entry.ts';
import { findCorals } from '../../../core/corals/find.ts';
import type { CoralGroup } from '../../../core/corals/kind.ts';
import { namedCoral, onlyEntry, type NamedCoral } from '../../../core/corals/named.ts';
import type { Origin } from '../../../core/corals/scene.ts';
import type { Frame } from '../../../core/language/frame.ts';
import { met, type Met } from '../../../core/language/met.ts';
import type { Answer, Fact } from '../../answer.ts';
import type { OwnContext } from '../../command.ts';
import { aboutCoralCommand } from '../../coral/about.ts';
import { fullName, tellingName } from '../../coral/asked-kind.ts';
import { withFirst } from '../../coral/facet-first.ts';
import { noPageAnswer } from '../../coral/no-page-answer.ts';
import type { SaidPar } from '../../coral/par-verdict.ts';
import { call } from '../../called.ts';
import { readableAs } from './readable-as.ts';

/** The corals that were named, each once. */
export function coralsOf({ slots: { corals = [] } }: Frame): readonly NamedCoral[] {
  const found: NamedCoral[] = [];
  for (const one of corals.flatMap((name) => namedCoral(name) ?? []))
    if (!found.some(({ entries }) => entries[0] === one.entries[0])) found.push(one);
  return found;
}

/** What is said of a real genus that has no page, where no other coral is named. */
export function noPageOf(frame: Frame): Answer | undefined {
  return coralsOf(frame).length > 0 ? undefined : anyWithoutPage(frame);
}

/** The same whatever else is named: of a pair both must be known. */
export function anyWithoutPage({ slots: { corals = [] } }: Frame): Answer | undefined {
  for (const name of corals) {
    const found = findCorals(name);
    if (found.kind === 'no page') return noPageAnswer(name, found);
  }
  return undefined;
}

const groups: readonly (readonly [CoralGroup, readonly Met[]])[] = [
  ['small-polyp', ['corals.otherSps', 'corals.acropora', 'corals.montipora', 'corals.birdsnest']],
  ['large-polyp', ['corals.branchLps', 'corals.euphyllia', 'corals.brain', 'corals.fleshyLps']],
  ['soft', ['corals.softCoral']],
  ['zoanthid', ['corals.zoanthid', 'corals.palythoa']],
  ['mushroom', ['corals.mushroom']],
  ['anemone', ['animals.anemone']],
];

/** Groups of corals that words of a message belong to: "sps", "softies". */
export function groupsOf({ reading: { scanned } }: Frame): readonly CoralGroup[] {
  return groups.flatMap(([group, classes]) => (met(scanned, ...classes) ? [group] : []));
}

/** The one group a message speaks of, where it names no coral. */
export function groupOf(frame: Frame): CoralGroup | undefined {
  const [group, other] = groupsOf(frame);
  return (frame.slots.corals ?? []).length === 0 && other === undefined ? group : undefined;
}

/** The one group that other words than names speak of, whatever is named: "room for a couple of lps beside my leather". */
export function groupAsked(frame: Frame): CoralGroup | undefined {
  const { reading } = frame;
  const tokens = reading.scanned.tokens.filter(({ name }) => name?.class !== 'coral');
  const [group, other] = groupsOf({
    ...frame,
    reading: { ...reading, scanned: { ...reading.scanned, tokens } },
  });
  return other === undefined ? group : undefined;
}

/** No light over a tank is below or above this, PAR. */
const PAR = { least: 5, most: 2500 } as const;

/** Light that was read at spots, in order; what is more than any light in PAR is none. */
export function parsOf({ slots: { light = [] } }: Frame): readonly SaidPar[] {
  return light.flatMap((text) => {
    const value = readableAs('light', text);
    return value === undefined || value < PAR.least || value > PAR.most ? [] : [{ text, value }];
  });
}

/** Lux that was read: said so, or a bare number that no light in PAR can be, or any bare one where lux is spoken of. */
export function luxOf({ kind, slots: { lux = [], light = [], counts = [] } }: Frame): string | undefined {
  const bare = [...light, ...counts.map(String)].map(Number);
  const found = bare.find((value) => value > PAR.most || (kind === 'lux' && value > LEAST_LUX));
  return lux[0] ?? (found === undefined ? undefined : `${found} lux`);
}

/** Every reading of a meter in lux, each once, in order; a bare one beside others is lux as they are. */
export function allLuxOf(frame: Frame): readonly string[] {
  const first = luxOf(frame);
  if (first === undefined) return [];
  const bare = frame.reading.said
    .filter(({ part, number }) => part === 'light' && number.kinds.length === 0 && number.value > LEAST_LUX)
    .map(({ text }) => `${text} lux`);
  return [...new Set([first, ...(frame.slots.lux ?? []), ...bare])];
}

/** A bare number below this, beside the word lux, counts something else. */
const LEAST_LUX = 200;

/** Where a piece grew, as members say it; a name tells nothing of it ("sea plume"). */
export function originOf({ reading: { scanned: whole } }: Frame): Origin | undefined {
  const scanned = { ...whole, tokens: whole.tokens.filter(({ name }) => name?.class !== 'coral') };
  if (met(scanned, 'places.seaFarm')) return 'maricultured';
  if (met(scanned, 'places.deepWater')) return 'deep';
  if (met(scanned, 'places.captive')) return 'tank-grown';
  return met(scanned, 'places.wild') ? 'wild' : undefined;
}

/**
 * The page of a coral with some of its lines first. A name that can mean several is answered where these lines are the
 * same for all of them, and asked back where they differ.
 */
export function linesFirst(
  named: NamedCoral,
  lines: (entry: CoralEntry) => readonly Fact[],
  context: OwnContext,
): Answer {
  const entry = onlyEntry(named) ?? sameFor(named, lines);
  if (entry === undefined) return call(aboutCoralCommand, { coral: named.name }, context);
  const page = call(aboutCoralCommand, { coral: tellingName(entry) }, context);
  return withFirst(withKin(page, named, entry), entry, lines(entry));
}

/** The first it can mean, where all have the same lines. */
function sameFor(
  { entries }: NamedCoral,
  lines: (entry: CoralEntry) => readonly Fact[],
): CoralEntry | undefined {
  const texts = new Set(entries.map((entry) => JSON.stringify(lines(entry))));
  return texts.size === 1 ? entries[0] : undefined;
}

/** Names the others a name can mean, for none is guessed in silence. */
function withKin(page: Answer, { name, entries }: NamedCoral, meant: CoralEntry): Answer {
  const others = entries.filter((entry) => entry !== meant);
  if (others.length === 0) return page;
  const words = others.slice(0, 4).map(fullName).join(', or ');
  return { ...page, read: [`"${name}" as ${fullName(meant)}; it can also be ${words}`, ...page.read] };
}
