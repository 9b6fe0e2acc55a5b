import { palytoxinCaution } from '../../core/corals/cautions.ts';
import type { CoralEntry } from '../../core/corals/entry.ts';
import { fewOf } from '../../core/corals/say.ts';
import type { Fact } from '../answer.ts';
import { based, basedStatement } from './based.ts';

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

/** As cautions: "Zoas: May hold palytoxin. ...". */
export function hazardCautions(lines: readonly Fact[]): readonly string[] {
  return lines.map(({ label, value }) => `${label}: ${value}`);
}
