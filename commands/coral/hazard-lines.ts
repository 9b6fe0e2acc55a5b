import { palytoxinCaution } from '../../core/corals/cautions.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { fewOf } from '../../core/corals/say.ts';
import type { Fact } from '../answer.ts';
import { based, basedStatement } from './based.ts';
import { namedDanger } from './named-danger.ts';
import { palytoxinCautions } from './palytoxin-cautions.ts';

/** Harm to people, palytoxin before all else; one line a coral and kind of harm. */
export function hazardLines(entries: readonly CoralEntry[]): readonly Fact[] {
  return [...palytoxinLines(entries), ...entries.flatMap(noteLines)];
}

/** Everyone of these is meant by the one caution. */
function palytoxinLines(entries: readonly CoralEntry[]): readonly Fact[] {
  const holders = entries.filter(({ hazard }) => hazard?.palytoxin === true);
  if (holders.length === 0) return [];
  const label = fewOf(holders.map(({ names }) => names.common[0]));
  const { text, basis } = palytoxinCaution;
  return [{ label, value: based(`${text}.`, basis) }];
}

function noteLines({ names, hazard }: CoralEntry): readonly Fact[] {
  if (hazard === undefined || hazard.notes.length === 0) return [];
  return [
    {
      label: names.common[0],
      value: hazard.notes.map(basedStatement).join('. '),
    },
  ];
}

/** The same as dangers, a line each, named where a coral begins. */
export function hazardCautions(entries: readonly CoralEntry[]): readonly string[] {
  return [...palytoxinCautions(entries), ...entries.flatMap(noteDangers)];
}

function noteDangers({ names, hazard }: CoralEntry): readonly string[] {
  const notes = hazard?.notes ?? [];
  return notes.map((note, at) => {
    const words = `${basedStatement(note)}.`;
    return at === 0 ? namedDanger([names.common[0]], words) : words;
  });
}
