import type { CoralEntry, OldName } from '../../core/corals/entry.ts';
import { based, basedStatement } from './based.ts';

const kinds: Readonly<Record<OldName['kind'], string>> = {
  older: 'older name',
  spelling: 'other spelling',
  'trade label': 'sold as',
};

/** What it is called and was called: "Euphyllia paraancora (older name)". */
export function namingRead({ scientific, names }: CoralEntry): readonly string[] {
  const { covers, superseded, note, basis } = scientific;
  const also = names.common.slice(1);
  const old = superseded.map((name) => based(`${oldText(name)}, ${kinds[name.kind]}`, name.basis));
  return [
    ...(also.length === 0 ? [] : [`also called ${also.join(', ')}`]),
    ...(old.length === 0 ? [] : [`other names: ${old.join('; ')}`]),
    ...(covers === undefined ? [] : [based(`takes in ${covers}`, basis)]),
    ...(note === undefined ? [] : [basedStatement(note)]),
  ];
}

function oldText({ name, note, now }: OldName): string {
  const narrowed = note === undefined ? name : `${name} (${note})`;
  return now === undefined ? narrowed : `${narrowed}, now ${now}`;
}
