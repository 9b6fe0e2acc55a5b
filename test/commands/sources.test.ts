import { describe, expect, it } from 'vitest';
import type { Answer } from '../../commands/answer.ts';
import { claimCommand } from '../../commands/claim.ts';
import { tellingName } from '../../commands/coral/asked-kind.ts';
import { findCommand } from '../../commands/index.ts';
import { primerIds } from '../../core/care/primers/primer.ts';
import { symptomCard, symptomIds, type SymptomId } from '../../core/care/symptoms/cards.ts';
import { urgentIds } from '../../core/care/urgent/cards.ts';
import { corals } from '../../core/corals/coral-list.ts';
import { Problem } from '../../core/problem.ts';
import { sourceLabel, type Source } from '../../core/source.ts';
import { sources } from '../../core/sources.ts';
import { ask } from '../ask.ts';
import { cases } from '../cases/all.ts';
import { earlier } from '../sentences.ts';
import { rules } from '../core/claims/rules.ts';
import { twoPersons } from './coral/person.ts';

/** How a paper is cited in running text, and the marks that say where a number is from. */
const PAPER = /\p{Lu}[\p{L}’.-]+(?: et al\.| & (?:van )?\p{Lu}[\p{L}’-]+)? (?:1[89]|20)\d\d(?![\d-])/gu;
/** Words before a year that are no author. */
const NO_AUTHOR =
  /^(?:January|February|March|April|May|June|July|August|September|October|November|December|Mon|Tue|Wed|Thu|Fri|Sat|Sun|CIE|ISO|IUPAC|Magnesium|Calcium|Mg|Ca) /;
const MARK = /(?<!is )published: ([^()]+)/g;

function textsOf({ headline, read, facts, steps, working, cautions, table }: Answer): readonly string[] {
  const told = facts.flatMap(({ label, value, verdict = '' }) => [label, value, verdict]);
  const cells = table === undefined ? [] : [...table.head, ...table.rows.flat()];
  return [headline, ...read, ...told, ...steps, ...working, ...cautions, ...cells];
}

/** Behind "published: " other marks can follow; they are no papers. */
const OTHER_MARKS = new Set(['common practice', 'from memory', 'project rule']);

/** What a text names and the answer's list of sources does not hold. */
function faults(given: Answer): readonly string[] {
  const listed = given.sources.flatMap((code) => sourceLabel(sources[code]) ?? []);
  return textsOf(given).flatMap((text) => {
    const papers = [...text.matchAll(PAPER)].map(([paper]) => paper).filter((one) => !NO_AUTHOR.test(one));
    const marked = [...text.matchAll(MARK)]
      .flatMap(([, names = '']) => names.split('; ').map((name) => name.replace(/^published: /, '').trim()))
      .filter((name) => !OTHER_MARKS.has(name));
    return [
      ...papers.filter((paper) => !listed.some((label) => label.endsWith(paper))),
      ...marked.filter((name) => !listed.includes(name)),
      ...(text.includes('common practice') && !given.sources.includes('practice') ? ['common practice'] : []),
      ...(text.includes('from memory') && !given.sources.includes('memory') ? ['from memory'] : []),
    ].map((name) => `${name} in "${text.slice(0, 90)}"`);
  });
}

function run(name: string, input: Readonly<Record<string, unknown>>): Answer {
  const command = findCommand(name.split(' '));
  if (command === undefined) throw new Error(`no command ${name}`);
  return command.run(input, { nowMs: 0 });
}

describe('a source', () => {
  it.each(Object.entries<Source>(sources))('%s can be found', (_, source) => {
    expect(source.title.length).toBeGreaterThan(10);
    if (source.kind !== 'published' && source.kind !== 'standard') return;
    expect(source.authors).toMatch(/\p{Lu}/u);
    expect(source.year).toSatisfy(
      (year) => year === 'undated' || (Number(year) > 1850 && Number(year) < 2030),
    );
    expect(source.title).not.toMatch(/^\d{4}|\bet al\./);
  });

  it('has a name of its own', () => {
    const named = Object.values<Source>(sources).flatMap((source) => sourceLabel(source) ?? []);
    expect(new Set(named).size).toBe(named.length);
  });
});

describe('whatever paper a text names is in its list of sources', () => {
  it.each(corals.map((entry) => [entry.id, entry] as const))('%s', (_, entry) => {
    const coral = tellingName(entry);
    const other = corals[(corals.indexOf(entry) + 1) % corals.length];
    const b = tellingName(other ?? entry);
    const answers = [
      run('coral about', { coral }),
      run('coral compare', { a: coral, b }),
      run('coral growth', { coral, size: '5 cm' }),
      run('coral feed', { food: 'flake', mass: '1 g', volume: '200 L', coral }),
      run('coral suited', { wish: coral, par: '120' }),
      ...['wild', 'maricultured', 'tank-grown'].map((origin) => run('light range', { coral, origin })),
    ];
    for (const given of answers) expect(faults(given)).toEqual([]);
  });

  it('where corals stand beside each other', () => {
    const [{ say }] = twoPersons();
    for (const [index, entry] of corals.entries()) {
      const other = corals[(index + 40) % corals.length] ?? entry;
      const [one, two] = [tellingName(entry), tellingName(other)];
      const placed = [
        say(`/coral add coral:${one} at:50 cm from the left, 25 cm from the front, 10 cm up size:8 cm`),
        say(`/coral add coral:${two} at:60 cm from the left, 25 cm from the front, 10 cm up size:8 cm`),
        say('/coral check'),
        say('/coral list'),
      ];
      for (const given of placed) expect(faults(given), `${one} beside ${two}`).toEqual([]);
      say('/tank remove tank:Pantry sure:yes');
      say('/tank new name:Pantry size:120 x 50 x 50 cm measured:inside height:46 cm');
    }
  });

  it('in every primer and every card', () => {
    const answers = [
      ...primerIds.map((card) => run('primer', { card })),
      ...urgentIds.map((what) => run('urgent', { what })),
      ...symptomIds.map((seen) => run('triage', { seen, ...unsure(seen) })),
      run('about', {}),
    ];
    for (const given of answers) expect(faults(given), given.headline).toEqual([]);
  });

  it('in every claim and every question of the corpus', () => {
    const questions = [
      ...Object.values(cases).map(({ asked: question }) => question),
      ...earlier.map(({ text }) => text),
    ];
    const answers = questions.flatMap(answered);
    const judged = rules.map(([rule]) => claimCommand.run({ rule }, { nowMs: 0 }));
    for (const given of [...answers, ...judged]) expect(faults(given), given.headline).toEqual([]);
    expect(answers.length).toBeGreaterThan(300);
  });
});

/** 'not sure' to each question of a symptom, so that its card comes. */
function unsure(id: SymptomId): Readonly<Record<string, string>> {
  const answers = symptomCard(id).questions.map((_, index) => [['one', 'two'][index] ?? '', 'not sure']);
  return Object.fromEntries(answers) as Readonly<Record<string, string>>;
}

function answered(question: string): readonly Answer[] {
  try {
    return [ask(question, { nowMs: 0 })];
  } catch (error) {
    if (error instanceof Problem) return [];
    throw error;
  }
}
