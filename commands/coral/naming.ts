import type { CoralEntry, OldName } from '../../core/corals/entry.ts';
import { based } from './guide-line.ts';

const kinds: Readonly<Record<OldName['kind'], string>> = {
  older: 'older name',
  spelling: 'other spelling',
  'trade label': 'sold as',
};

/** What it is called and was called: "Euphyllia paraancora (older name)". */
export function namingRead({ scientific, names }: CoralEntry): readonly string[] {
  const { covers, superseded, note, basis } = scientific;
  const also = names.common.slice(1);
  const old = superseded.map((name) => `${oldText(name)}, ${kinds[name.kind]}`);
  return [
    ...(also.length === 0 ? [] : [`also called ${also.join(', ')}`]),
    ...(old.length === 0 ? [] : [based(`other names: ${old.join('; ')}`, basis)]),
    ...(covers === undefined ? [] : [based(`takes in ${covers}`, basis)]),
    ...(note === undefined ? [] : [based(note.replace(/\.$/, ''), basis)]),
  ];
}

function oldText({ name, note, now }: OldName): string {
  const narrowed = note === undefined ? name : `${name} (${note})`;
  return now === undefined ? narrowed : `${narrowed}, now ${now}`;
}
