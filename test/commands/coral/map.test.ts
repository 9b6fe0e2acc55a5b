import { bothOf } from '../../core/picture/read-map.ts';
import { describe, expect, it } from 'vitest';
import { render } from '../../../bot/discord/message/render.ts';
import { toPng } from '../../../bot/png.ts';
import { MOST_CORALS } from '../../../commands/placed.ts';
import { corals } from '../../../core/corals/coral-list.ts';
import { textOf } from '../text.ts';
import { NOW_MS, twoPersons, type Person } from './person.ts';

/** Scenes are invented; torch beside hammer wants 20 cm (common practice, no source). */
function reef(): Person {
  const [person] = twoPersons();
  person.say('/coral add coral:torch at:20 x 30 x 20 cm size:10 cm');
  person.say('/coral add coral:branching hammer at:36 x 30 x 20 cm size:8 cm');
  person.say('/coral add coral:zoas at:70 x 5 x 10 cm size:4 cm label:<b>&"');
  return person;
}

describe('/coral map', () => {
  it('draws the tank and says in words what stands in the picture', () => {
    const given = reef().say('/coral map');
    expect(given.headline).toBe('Pantry from above and from the front: 2 to move, 1 settled.');
    expect(given.facts).toContainEqual({
      label: 'Branching hammer coral and Torch coral',
      value: 'sting',
      verdict: 'move',
    });
    expect(given.pictures?.[0]?.alt).toContain('To move: Branching hammer coral and Torch coral (sting)');
    expect(given.pictures?.[0]?.svg).toContain('&lt;b&gt;&amp;&quot;');
    expect(given.file).toBeUndefined();
    expect(textOf(given)).toMatch(/your own corals come first/);
    expect(given.dangers[0]).toMatch(/palytoxin/);
  });

  it('draws the empty glass, and what is not known of it', () => {
    const [{ say }] = twoPersons();
    expect(say('/coral map').headline).toMatch(/no corals here yet/);
    expect(say('/coral map').pictures?.[0]?.svg).toContain('No corals placed yet');
    say('/tank new name:Nano volume:250 L');
    const nano = say('/coral map tank:Nano');
    expect(textOf(nano)).toMatch(/100 x 50 x 50 cm to the water line is a guess from the volume/);
    expect(nano.pictures?.[0]?.alt).toMatch(/the size of the glass is a guess/);
    expect(nano.pictures?.[0]?.svg).toContain('a guessed size');
  });

  it('shows light and flow where they are known, and asks for light where it is not', () => {
    const { say, keep } = reef();
    expect(say('/coral map').steps.join()).toMatch(/light readings/);
    say('/tank edit flow:right to left');
    const measured = [
      [20, 100],
      [40, 150],
      [60, 300],
    ].map(([xCm = 0, ppfd = 0]) => ({
      spot: { xCm, yCm: 25, zCm: 20 },
      ppfd,
      atMs: NOW_MS,
    }));
    keep.addLightPoints(1, measured);
    const { steps, pictures, read } = say('/coral map');
    const both = bothOf(pictures ?? []);
    expect(steps.join()).not.toMatch(/Add light readings/);
    expect(both).toMatch(/>200 PAR</);
    expect(both).toContain('>flow right to left<');
    expect(read[0]).toBe('3 corals, 3 light readings, flow right to left');
  });

  it("is of a member's own tank alone, and reached from where corals are told", () => {
    const [ada, bea] = twoPersons();
    ada.say('/coral add coral:torch at:20 x 30 x 20 cm size:10 cm');
    expect(bea.say('/coral map').pictures?.[0]?.alt).not.toMatch(/Torch/);
    for (const line of ['/coral list', '/coral check', '/coral check coral:1'])
      expect(ada.say(line).next).toContainEqual({
        label: 'Map of the tank',
        command: 'coral map',
        input: {},
      });
    ada.say('/tank new name:Nano volume:60 L');
    ada.say('/tank use tank:Nano');
    expect(ada.say('/coral list tank:Pantry').next).toContainEqual({
      label: 'Map of the tank',
      command: 'coral map',
      input: { tank: 'Pantry' },
    });
  });
});

describe('the most corals a tank may have', () => {
  const [{ say, keep }] = twoPersons();
  for (let i = 0; i < MOST_CORALS; i++) {
    const spot = { xCm: (i * 37) % 120, yCm: (i * 17) % 50, zCm: (i * 7) % 40 };
    const coralId = corals[i % corals.length]?.id ?? '';
    keep.addCoral(1, { coralId, spot, rough: i % 5 === 0, diameterCm: 4 + (i % 9), origin: 'unknown' });
  }
  const given = say('/coral map');

  it('fit one message: picture, alt text within 1,024 characters, 4,000 in all', async () => {
    const pngs = await Promise.all((given.pictures ?? []).map(({ svg }) => toPng(svg)));
    const { body, files } = render({ ...given, pngs });
    const alt = given.pictures?.[0]?.alt;
    expect(body.attachments?.map(({ filename }) => filename)).toEqual([
      'from-above.png',
      'from-the-front.png',
      'conflict.png',
      'to-move-or-watch.txt',
    ]);
    expect(body.attachments?.[0]?.description).toBe(alt);
    expect(files).toHaveLength(4);
    const written = JSON.stringify(body.components).matchAll(/"content":("(?:[^"\\]|\\.)*")/g);
    const texts = [...written].map(([, text = '']) => String(JSON.parse(text)));
    expect(texts.length).toBeGreaterThan(2);
    expect(texts.join('').length).toBeLessThanOrEqual(4000);
  });

  it('have every problem with its numbers in a file, for the text has no room for all', () => {
    const lines = given.file?.text.trimEnd().split('\n') ?? [];
    expect(given.read.join()).toMatch(/in the file/);
    expect(lines.length).toBeGreaterThanOrEqual(given.facts.length);
    expect(lines[0]).toMatch(/^move \([a-z ]+\): .*\d/);
    for (const line of lines) expect(line).toMatch(/^(?:move|watch) \([a-z ]+\): /);
  });
});
