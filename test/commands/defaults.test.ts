import { describe, expect, it } from 'vitest';
import { withDefaults } from '../../commands/defaults.ts';
import { commands, findCommand } from '../../commands/index.ts';
import type { Command } from '../../commands/command.ts';
import { addCommand } from '../../commands/log/add.ts';
import { optionsOf } from '../../commands/options.ts';
import { factOf, member, type Member } from './log/member.ts';
import { textOf } from './text.ts';

/** Options of a volume, a salinity or a temperature that the tank in use does not fill, each with why not. */
const notFilled: Readonly<Record<string, string>> = {
  'dose limewater amount': 'the top-off or the batch, not the tank',
  'dose limewater temperature': 'the vessel stands in the room, not in the tank',
  'dose solution volume': 'the bottle',
  'dose bottle dose': 'a dose of the bottle, by its label',
  'dose bottle per': 'the water a label is written for',
  'dose bottle amount': 'what goes in of the bottle',
  'dose bottle bottle': 'the bottle that is made',
  'dose limewater per': 'the water the lime is put into',
  'dose limewater daily': 'what evaporates in a day',
  'dose net glass': 'the size a tank is called by, of whatever tank is spoken of',
  'dose net volume': 'the water of that tank, which may be another',
  'dose label per': 'the water a label is written for',
  'waterchange goal amount': 'the water of each change, not the tank',
  'waterchange once amount': 'the water changed, not the tank',
  'waterchange once bucket': 'what is carried at a time',
  'waterchange drip amount': 'the water passed through, not the tank',
  'water warm fresh': 'the water that goes in',
  'water warm goal': 'an aim, or worked out',
  'water warm amount': 'the water that goes in',
  'water spill drains': 'a layer of the display',
  'water spill pipes': 'the pipes',
  'water spill room': 'free space in the sump',
  'salinity mix volume': 'the bin',
  'salinity mix label': 'what the label of the salt says',
  'salinity mix scoop': 'what one scoop of it weighs',
  'salinity mix goal': 'an aim, not a reading: 35 ppt, and said',
  'salinity convert reading': 'the reading to convert',
  'salinity convert temperature': 'left out it says that the instrument compensates',
  'salinity check reading': 'the reading to check',
  'salinity check standard': 'what the instrument shows on a fluid',
  'salinity check fresh': 'what the instrument shows on fresh water',
  'salinity adjust goal': 'an aim, not a reading: 35 ppt, and said',
  'salinity adjust pace': 'a change a day',
  'salinity adjust share': 'the part that is changed',
  'salinity adjust amount': 'the water changed, not the tank',
  'salinity adjust fresh': 'the water swapped in',
  'salinity batch volume': 'the bin',
  'salinity batch now': 'what the bin reads',
  'salinity batch goal': 'an aim, not a reading: 35 ppt, and said',
  'salinity compare first': 'what one instrument shows',
  'salinity compare second': 'what the other shows',
  'salinity forecast evaporation': 'what goes',
  'salinity forecast days': 'a time',
  'salinity forecast top-off': 'what replaces it',
  'salinity lost out': 'the water that left the tank',
  'salinity lost days': 'a time',
  'salinity excess now': 'just read, since fresh water ran in',
  'salinity excess usual': 'what it reads otherwise',
  'coral suited volume': 'a tank that is not kept here',
};

const WATER = new Set<string | undefined>(['volume', 'temperature']);
/** A salinity has no quantity kind: every free text of the salinity commands but an amount of salt. */
const options = commands.flatMap(({ path, options: schema }) =>
  optionsOf(schema)
    .filter(
      ({ name, kind, quantity, choices }) =>
        WATER.has(quantity) ||
        (path[0] === 'salinity' && kind === 'string' && choices === undefined && name !== 'amount'),
    )
    .map(({ name, fill }) => ({ option: `${path.join(' ')} ${name}`, fill })),
);

function commandOf(...path: string[]): Command {
  const found = findCommand(path);
  if (found === undefined) throw new Error(`no command ${path.join(' ')}`);
  return found;
}

const check = commandOf('salinity', 'check');
const convert = commandOf('salinity', 'convert');
const limewater = commandOf('dose', 'limewater');

function hidden(command: Command, input: Record<string, string>, { keep }: Member): boolean {
  return withDefaults(command, input, { nowMs: 0, keep }).hidden;
}

/** A member who logged 25.6 °C on 3 January 2026. */
function warm(changes: Parameters<typeof member>[0] = {}): Member {
  const someone = member(changes);
  someone.run(addCommand, { readings: 'kh 8 25.6c' });
  return someone;
}

describe('what the tank in use fills in', () => {
  it.each(options)('$option is filled, or there is a reason not to', ({ option, fill }) => {
    expect(fill === undefined).toBe(option in notFilled);
  });

  it('has no reason for an option that is not there', () => {
    expect(Object.keys(notFilled).filter((name) => !options.some(({ option }) => option === name))).toEqual(
      [],
    );
    expect(options.filter(({ fill }) => fill !== undefined).length).toBeGreaterThan(8);
  });
});

// 50.62 mS/cm is S 33.19 at 25 °C and, by 0.7 a degree, about 32.8 at 25.6 °C: PSS-78, Unesco Tech. Pap. 44.
describe('the temperature of the tank in use', () => {
  const line = 'last temperature logged for your tank Reef: 25.6 °C on 2026-01-03';

  it('fills what a probe without compensation needs, says so, and is for the member alone', () => {
    const someone = warm();
    const input = { reading: '50.62 mS/cm' };
    const answer = someone.run(check, input);
    expect(answer.read[0]).toBe(line);
    expect(answer.read).toContain('water at 25.6 °C');
    expect(answer.headline).toMatch(
      /^50\.62 mS\/cm is not 35 ppt but 33\.2 ppt .* If not, 32\.8 ppt at 25\.6 °C\.$/,
    );
    expect(hidden(check, input, someone)).toBe(true);
  });

  it('gives way to the temperature typed', () => {
    const someone = warm();
    const input = { reading: '50.62 mS/cm', temperature: '20 C' };
    const answer = someone.run(check, input);
    expect(answer.read).toContain('water at 20 °C');
    expect(textOf(answer)).not.toContain('25.6');
    expect(hidden(check, input, someone)).toBe(false);
  });

  it('is left out where none is logged, as before', () => {
    const someone = member();
    const input = { reading: '50.62 mS/cm' };
    const answer = someone.run(check, input);
    expect(answer.read.join()).toContain('no temperature given');
    expect(factOf(answer, 'if it does not correct')).toMatch(/^37\.2 ppt at 20 °C, 32\.5 ppt at 26 °C/);
    expect(hidden(check, input, someone)).toBe(false);
  });

  it('is the newest one, and its day is said however old it is', () => {
    const someone = warm({ units: { temperature: '°F' } });
    someone.wait(60);
    expect(someone.run(check, { reading: '45 mS/cm' }).read[0]).toBe(
      'last temperature logged for your tank Reef: 78.1 °F on 2026-01-03',
    );
    someone.run(addCommand, { readings: 'temp 80' });
    expect(someone.run(check, { reading: '45 mS/cm' }).read[0]).toBe(
      'last temperature logged for your tank Reef: 80 °F on 2026-03-04',
    );
  });

  // A hydrometer for 60 °F shows 1.02435 in water of S 35 at 25 °C (EOS-80, Unesco 44); 0.6 °C more takes 0.0002 off,
  // its glass adds 0.00025 (from memory).
  it('shows what a glass hydrometer would mean in water that warm, and asks for one temperature', () => {
    const answer = warm().run(check, { reading: '1.0244', with: '60F/60F' });
    expect(factOf(answer, 'if it is a glass hydrometer, in water of 25.6 °C')).toMatch(/^35 ppt/);
    expect(answer.steps[0]).toMatch(/^Read a 35 ppt standard with the same instrument, at 25\.6 °C/);
    const plain = member().run(check, { reading: '1.0244', with: '60F/60F' });
    expect(textOf(plain)).not.toContain('if it is a glass hydrometer');
  });

  it('never turns a conversion into one for another instrument', () => {
    const someone = warm();
    for (const reading of ['1.025', '53 mS/cm']) {
      const answer = someone.run(convert, { reading });
      expect(textOf(answer)).not.toContain('25.6');
      expect(answer).toEqual(member().run(convert, { reading }));
    }
  });

  it('is not that of a vessel of limewater, whose own is assumed and said', () => {
    const note = 'no temperature of the limewater given, so 25 °C; cooler water holds more lime';
    for (const input of [{ amount: '4 L' }, { amount: '4 L', goal: '0.6 dKH' }]) {
      const answer = warm().run(limewater, input);
      expect(answer.read).toContain(note);
      expect(textOf(answer)).not.toContain('25.6');
    }
    const given = warm().run(limewater, { amount: '4 L', temperature: '20 C' });
    expect(given.read).not.toContain(note);
    expect(given.read[0]).toContain('at 20 °C');
  });
});

describe('a bare number', () => {
  it.each([
    [convert, '1.025'],
    [check, '45 mS/cm'],
  ])('is a temperature in the unit the member prefers', (command, reading) => {
    const someone = member({ units: { temperature: '°F' } });
    const answer = someone.run(command, { reading, temperature: '78' });
    expect(answer.read).toContain('78 read in your preferred unit, °F');
    expect(textOf(answer)).toMatch(/25\.[5-6]\d* °C/);
  });
});
