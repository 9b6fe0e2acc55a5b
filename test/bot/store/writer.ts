import { writeSync } from 'node:fs';
import { openStore } from '../../../bot/store/open.ts';
import { Problem } from '../../../core/problem.ts';

/** Adds entries as fast as it can and says the id of each once it is kept. Arguments: file, first value, how many. */
const [file = '', first = '0', most = '0'] = process.argv.slice(2);
const person = '100000000000000001';

try {
  const keep = openStore({ file, nowMs: Date.now }).keepFor(person);
  const { id } = keep.tankInUse() ?? keep.addTank(tank());
  for (let i = Number(first); i < Number(first) + Number(most); i++) {
    const entry = keep.addEntry(id, {
      atMs: i,
      values: [
        { parameter: 'alkalinity', value: i },
        { parameter: 'calcium', value: i + 0.5 },
      ],
      note: `entry ${i}`,
    });
    writeSync(1, `${entry?.id} ${i}\n`);
  }
} catch (error) {
  if (!(error instanceof Problem)) throw error;
  writeSync(2, error.message);
  process.exitCode = 78;
}

function tank() {
  return { name: 'Reef', kind: 'mixed', netVolumeL: 100, volumeBasis: '', units: {}, targets: {} } as const;
}
