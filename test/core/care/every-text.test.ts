import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ask } from '../../ask.ts';
import { primers } from '../../../core/care/primers/cards.ts';
import { hurtCards } from '../../../core/care/hurt/cards.ts';
import { symptomCards } from '../../../core/care/symptoms/cards.ts';
import { urgentCards } from '../../../core/care/urgent/cards.ts';
import { Problem } from '../../../core/problem.ts';
import { cases } from '../../cases/all.ts';
import { textsOf } from '../../sentences.ts';
import { literalsIn } from './literals.ts';
import { dosesWithin, medicineDoses } from './medicine.ts';

const sources = ['core', 'commands', 'bot'].flatMap((layer) =>
  readdirSync(layer, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(layer, name)),
);

/** Doses in the strings and templates of one source, with the line. */
function dosesIn(source: string): readonly string[] {
  return literalsIn(source).flatMap(({ line, text }) =>
    medicineDoses(text).map((sentence) => `${line}: ${sentence}`),
  );
}

/** What members ask of medicines and peroxide, with and without an amount of their own. */
const asked = [
  'how much copper for 40 gal',
  'copper 0.5 ppm for ich in 100 L?',
  '12% peroxide dose for 75 gal bryopsis',
  'for bryopsis i read 1:10 3x a week, so whats that for my 75g? regular 3%',
  'someone told me 1 ml of 3% peroxide per 10 gallons, 75 gal tank',
  'is it true that 5 ml peroxide per 100 L kills algae',
  'peroxide dip for zoas how many ml per litre',
  'levamisole for flatworms in 200 L',
  'should i use doxycycline for brown jelly',
  'metronidazole for my clownfish, 30 L quarantine',
  'how many drops of clove oil to euthanize a fish',
  'how much formalin per gallon against velvet',
  'praziquantel 2.5 mg per litre right?',
  'iodine dip strength for frags',
  'which antibiotic for fin rot',
  'how much methylene blue for 20 gallons',
  'erythromycin 200 mg per 10 gal for cyano is fine?',
  'fenbendazole 40 g for hydroids',
  'how much chloroquine for a 55 gal',
  'is copper ok at 0.2 mg/L in a reef',
];

describe('no text of the product holds a medicine with an amount', () => {
  it.each(['core', 'commands', 'bot'])('in the sources of %s', (layer) => {
    const files = sources.filter((file) => file.startsWith(layer));
    expect(files.length).toBeGreaterThan(50);
    expect(
      files.flatMap((file) => dosesIn(readFileSync(file, 'utf8')).map((found) => `${file}:${found}`)),
    ).toEqual([]);
  });

  it('on any card', () =>
    expect(
      [...primers, ...Object.values({ ...urgentCards, ...hurtCards, ...symptomCards })].flatMap((card) =>
        dosesWithin(card),
      ),
    ).toEqual([]));

  it('in any answer to some fifteen hundred sentences, but for amounts the member said', () => {
    const sentences = [
      ...asked,
      ...Object.values({ ...cases }).map((one) => one.asked),
      ...textsOf(() => true),
    ];
    expect(sentences.length).toBeGreaterThan(1400);
    expect(
      sentences.flatMap((said) => dosesWithin(answerTo(said), said).map((dose) => `${said}: ${dose}`)),
    ).toEqual([]);
  });
});

/** The answer, or the texts of what is asked back. */
function answerTo(question: string): unknown {
  try {
    return ask(question, { nowMs: 0 });
  } catch (error) {
    if (error instanceof Problem) return [error.message, error.hint, error.choices];
    throw error;
  }
}

describe('the scan', () => {
  it.each([
    [`const a = 'Add 0.5 mg/L copper.';`, 1],
    [`const a = "Use 2 mL formalin per gallon";`, 1],
    ['const a = `${fixed(dose, 1)} mL of 3 % peroxide per dose`;', 1],
    ['const a = `in ${litres} L: ${name} at ${`${n} mg of chloroquine`}`;', 1],
    [`const re = /it's/; const b = '5 drops of clove oil';`, 1],
    [`const x = a / b; const c = 'then 3 tablets of doxycycline'; // don't`, 1],
    [`/* '1 g of copper' */ // "2 mL of peroxide"`, 0],
    [`const re = /\\d mL of peroxide/;`, 0],
    [`const a = 'No copper in a reef tank. Change 20 L.';`, 0],
    [`const a = 'caf\\u00e9, it\\'s 2 g of metronidazole';`, 1],
  ])('%s', (source, count) => expect(dosesIn(source)).toHaveLength(count));

  it('sees what a source holds: every quoted text of a card is among its literals', () => {
    const texts = new Set(
      sources
        .filter((file) => file.includes(join('care', 'hurt')))
        .flatMap((file) => literalsIn(readFileSync(file, 'utf8')).map(({ text }) => text)),
    );
    const steps = Object.values(hurtCards).flatMap((card) => [...card.steps, ...card.never]);
    const plain = steps.filter((step) => texts.has(step));
    expect(plain.length / steps.length).toBeGreaterThan(0.85);
  });

  it('counts no amount that the member said', () => {
    expect(medicineDoses('your rule: 1 mL of peroxide per 10 gal', '1 ml per 10 gal peroxide')).toEqual([]);
    expect(medicineDoses('7.5 mL of peroxide in all', '1 ml per 10 gal peroxide')).toHaveLength(1);
  });
});
