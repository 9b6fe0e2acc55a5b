import type { Statement } from '../../core/corals/basis.ts';
import { disagreementsOn } from '../../core/corals/disagreements.ts';
import type { CoralEntry, GrowthFigures } from '../../core/corals/entry.ts';
import { lightFor } from '../../core/corals/light-need.ts';
import { flowWords } from '../../core/corals/rules/flow.ts';
import { cm, cmRange } from '../../core/corals/say.ts';
import { fixed } from '../../core/quantity/format.ts';
import type { Fact } from '../answer.ts';
import { based, basedList, basedStatement } from './based.ts';

/** Everything the guide says of a coral: first what the headline of its page has not and what decides its place. */
export function aboutLines(entry: CoralEntry): readonly Fact[] {
  return [
    ...(entry.photosynthetic ? [] : [feedingLine(entry)]),
    roomLine(entry),
    stingLine(entry),
    sizeLine(entry),
    lightLine(entry),
    flowLine(entry),
    spotLine(entry),
    hardinessLine(entry),
    ...(entry.photosynthetic ? [feedingLine(entry)] : []),
    ...neighbourLines(entry),
    growthLine(entry),
    uptakeLine(entry),
    wildLine(entry),
    ...listLine('sources differ', disagreementsOn(entry)),
    lawLine(entry),
  ];
}

export function lightLine(entry: CoralEntry): Fact {
  const { lowPpfd, highPpfd, startPpfd, basis } = entry.light;
  const wild = lightFor(entry, 'wild');
  const start = `a tank-grown piece begins near ${startPpfd}`;
  const value = entry.photosynthetic
    ? `${based(`${lowPpfd} to ${highPpfd} PAR, ${start}`, basis)}; a wild one near ${wild.startPpfd} (${wild.startBasis})`
    : based(`needs none, it lives by food; kept at ${lowPpfd} to ${highPpfd} PAR`, basis);
  return { label: 'light', value };
}

export function flowLine({ flow, ...entry }: CoralEntry): Fact {
  const { note, basis } = flow;
  const words = based(flowWords({ flow, ...entry }), basis);
  return {
    label: 'flow',
    value: note === undefined ? words : `${words}. ${basedStatement(note)}`,
  };
}

export function spotLine({ ground, spot, moves, shade }: CoralEntry): Fact {
  return {
    label: 'spot',
    value: [
      based(`on ${ground.value}`, ground.basis),
      basedStatement(spot),
      ...(moves.value === 'stays' ? [] : [based(moves.value, moves.basis)]),
      ...(shade.value ? [based('shades what is below it', shade.basis)] : []),
    ].join('; '),
  };
}

export function stingLine({ sting }: CoralEntry): Fact {
  const { potency, potencyBasis, reachLowCm, reachHighCm, reachBasis, weapon, when, whenNote } = sting;
  const hours = when === 'both' ? 'day and night' : `mostly by ${when}`;
  const reach = based(`reaches ${cmRange(reachLowCm, reachHighCm)} at full stretch`, reachBasis);
  return {
    label: 'sting',
    value: [
      based(potency, potencyBasis),
      reach,
      `by ${weapon}, ${[hours, ...(whenNote === undefined ? [] : [whenNote])].join(', ')} (from memory)`,
      ...sting.notes.map(basedStatement),
    ].join('; '),
  };
}

export function roomLine({ sting: { keepClearCm, keepClearBasis } }: CoralEntry): Fact {
  return {
    label: 'room',
    value: based(`keep ${cm(keepClearCm)} clear to unlike kinds`, keepClearBasis),
  };
}

export function hardinessLine({ hardiness, record }: CoralEntry): Fact {
  return {
    label: 'keeping it',
    value: [based(hardiness.value, hardiness.basis), ...record.map(basedStatement)].join('. '),
  };
}

export function feedingLine({ feeding, photosynthetic }: CoralEntry): Fact {
  const notes = feeding.map(basedStatement);
  return {
    label: 'feeding',
    value: [...(photosynthetic ? [] : ['it must be fed']), ...notes].join('. '),
  };
}

function neighbourLines({ sting, susceptible }: CoralEntry): readonly Fact[] {
  const { allies, atRisk } = sting;
  const lives = allies.map(({ text, confidence, basis }) => based(`${text}, ${confidence}`, basis));
  return [
    ...(lives.length === 0 ? [] : [{ label: 'lives beside', value: lives.join('; ') }]),
    ...listLine('harms', atRisk),
    ...listLine('is harmed by', susceptible),
  ];
}

function listLine(label: string, statements: readonly Statement[]): readonly Fact[] {
  if (statements.length === 0) return [];
  return [{ label, value: basedList(statements) }];
}

export function sizeLine({ size, form }: CoralEntry): Fact {
  const { naturalMaxCm, naturalBasis } = size;
  const wild =
    naturalMaxCm === undefined || naturalBasis === undefined
      ? []
      : [based(`widest wild one ${cm(naturalMaxCm)}`, naturalBasis)];
  return {
    label: 'size',
    value: [widthText(size), based(form.text, form.basis), ...wild].join('; '),
  };
}

/** "up to some 40 cm wide in a tank (from memory)". */
export function widthText({ practicalMaxCm, basis }: CoralEntry['size']): string {
  return based(`up to some ${cm(practicalMaxCm)} wide in a tank`, basis);
}

export function growthLine({ growth }: CoralEntry): Fact {
  const { notes } = growth;
  return {
    label: 'growth',
    value: [yearText(growth), ...wildText(growth), ...notes.map(basedStatement)].join('. '),
  };
}

/** "2 to 5 cm wider a year (from memory)"; of a wild range whose it is: of these species, or of the whole genus. */
export function yearText(growth: CoralEntry['growth']): string {
  const { lowCmPerYear, highCmPerYear, range, basis } = growth;
  return based(`${cmRange(lowCmPerYear, highCmPerYear)} ${rangeWords(growth, range)}`, basis);
}

function rangeWords({ wild }: CoralEntry['growth'], range: CoralEntry['growth']['range']): string {
  if (range === 'recalled') return 'wider a year';
  if (range === '10th to 90th percentile of the genus') {
    return 'a year in the wild, 10th to 90th percentile over the whole genus';
  }
  const values = wild === undefined ? '' : ` of ${valuesOf(wild)}`;
  if (range === '10th to 90th percentile') return `a year in the wild, 10th to 90th percentile${values}`;
  return wild?.values === 1 ? 'a year in the wild, one value' : `a year in the wild, least to most${values}`;
}

/** The middle of the species' own values; one that is the range itself is not said twice. */
function wildText({ wild, range }: CoralEntry['growth']): readonly string[] {
  if (wild === undefined || (wild.values === 1 && range === 'minimum to maximum')) return [];
  const what = wild.values === 1 ? 'One wild value' : `Middle of ${valuesOf(wild)}`;
  return [based(`${what}: ${fixed(wild.medianMmPerYear / 10, 2)} cm a year`, wild.basis)];
}

/** "134 wild values of 3 species" */
function valuesOf({ values, species }: GrowthFigures): string {
  const kinds = species.length === 1 ? species[0] : `${species.length} species`;
  return `${values} wild values of ${kinds}`;
}

export function uptakeLine({ stonyDemand: { value, basis } }: CoralEntry): Fact {
  return { label: 'use of calcium and alkalinity', value: based(value, basis) };
}

function wildLine({ depth, habitat }: CoralEntry): Fact {
  const { upperM, lowerM, basis } = depth;
  const deep = based(upperM === undefined ? `to ${lowerM} m deep` : `${upperM} to ${lowerM} m deep`, basis);
  const places = [
    ...(habitat === undefined || habitat.wave.length === 0 ? [] : [`waves: ${habitat.wave.join(', ')}`]),
    ...(habitat === undefined || habitat.water.length === 0 ? [] : [`water: ${habitat.water.join(', ')}`]),
  ];
  return {
    label: 'in the wild',
    value:
      habitat === undefined || places.length === 0
        ? deep
        : `${deep}; ${based(places.join('; '), habitat.basis)}`,
  };
}

export function lawLine({ law: { cites, citesBasis, notes } }: CoralEntry): Fact {
  const listed =
    cites === 'II'
      ? based('CITES Appendix II: across borders it may need papers', citesBasis)
      : based('not in the CITES listings seen', citesBasis);
  return {
    label: 'law',
    value: `${[listed, ...notes.map(basedStatement)].join('. ')}. Local rules come first; no legal advice.`,
  };
}
