import { club, fillTank } from '../../bot/demo/club.ts';
import { fillCorals } from '../../bot/demo/corals.ts';
import { render } from '../../bot/discord/message/render.ts';
import { openStore } from '../../bot/store/open.ts';
import { readLine } from '../../bot/terminal/read.ts';
import { renderShort } from '../../bot/terminal/render.ts';
import { ask } from '../ask.ts';
import type { Answer } from '../../commands/answer.ts';
import type { Command } from '../../commands/command.ts';
import { commands, findCommand } from '../../commands/index.ts';
import type { Keep } from '../../commands/keep.ts';
import { optionsOf, validate } from '../../commands/options.ts';
import { lazyReader } from '../../bot/reader/load.ts';
import { Problem } from '../../core/problem.ts';
import { readQuantity } from '../../core/quantity/read.ts';
import { asked } from '../corpus.ts';
import { hostileSample } from '../hostile.ts';
import { timed } from './measure.ts';
import { printRows, type Row } from './table.ts';

const context = { nowMs: 0 };

/** Commands about what is kept; `store.ts` and `reminders.ts` measure what they do. */
const KEEPING = new Set(['tank', 'log', 'remind', 'mydata', 'desk']);
/** These change what is kept with every run. */
const CHANGING = new Set(['coral add', 'coral move', 'coral remove', 'light measured']);
/** These go through the whole guide, or draw: no goal was set for them. */
const LARGE = new Set(['coral suited', 'coral map']);

function isMeasured({ path }: Command): boolean {
  return !KEEPING.has(path[0]) && !CHANGING.has(path.join(' '));
}

const NOW_MS = Date.UTC(2026, 5, 1, 18);

/** The first member of the invented club, with a year of readings and five corals. */
function aMember(): Keep {
  const keep = openStore({ file: ':memory:', nowMs: () => NOW_MS }).keepFor('local');
  for (const tank of club.slice(0, 1)) fillTank(keep, tank, NOW_MS);
  for (const { id } of keep.tanks()) fillCorals(keep, id, NOW_MS);
  return keep;
}

/** Every command's own example: its answer, and the answer shown on both platforms. */
export function benchAnswers(): void {
  const calculations: Row[] = [];
  const answers: Answer[] = [];
  const member = { nowMs: NOW_MS, keep: aMember() };
  for (const command of commands.filter(isMeasured)) {
    const line = readLine(command.example, commands);
    if (line.kind !== 'command') continue;
    answers.push(command.run(line.input, member));
    const { p50 } = timed(() => command.run(line.input, member));
    const goal = LARGE.has(command.path.join(' ')) ? {} : { goal: 1 };
    calculations.push({ what: command.example.slice(0, 56), value: p50, unit: 'ms', ...goal });
  }
  printRows('Answers, median', calculations);
  const command = findCommand(['dose', 'amount']);
  if (command === undefined) throw new Error('no /dose amount');
  const input = { of: 'alkalinity', now: '7.2', goal: '8.4', with: 'soda ash', volume: '75 gal' };
  printRows('Parts, median', [
    {
      what: 'options checked against the schema',
      value: timed(() => validate(command.options, input)).p50,
      unit: 'ms',
      goal: 1,
    },
    {
      what: 'option list of a schema (kept)',
      value: timed(() => optionsOf(command.options)).p50,
      unit: 'ms',
      goal: 1,
    },
    {
      what: 'a quantity read: 3 * 20 L - 10 %',
      value: timed(() => readQuantity('volume', '3 * 20 L - 10 %', { field: 'x' })).p50,
      unit: 'ms',
      goal: 1,
    },
    {
      what: 'a line of the terminal read',
      value: timed(() => readLine(command.example, commands)).p50,
      unit: 'ms',
      goal: 1,
    },
    {
      what: 'all answers shown in the terminal, each',
      value: timed(() => answers.map((a) => renderShort(a, { width: 80, bold: false }))).p50 / answers.length,
      unit: 'ms',
      goal: 1,
    },
    {
      what: 'all answers shown on Discord, each',
      value: timed(() => answers.map((each) => render(each))).p50 / answers.length,
      unit: 'ms',
      goal: 1,
    },
  ]);
}

function attempt(text: string): void {
  try {
    ask(text, context);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
  }
}

/** The questions of the tests in plain words, and the slowest of 20,000 hostile texts. */
export function benchWords(): void {
  const questions = Object.values(asked);
  const hearing = questions.map((text) => timed(() => lazyReader.read(text), 200, 50).p50);
  const answering = questions.map((text) => timed(() => ask(text, context), 100, 30).p50);
  const slowest = hostileSample(1).map((text) => {
    const once = timed(() => attempt(text), 1, 0).most;
    return once < 5 ? once : timed(() => attempt(text), 3, 0).p50;
  });
  printRows(`Plain words, ${questions.length} questions`, [
    {
      what: 'taken apart, slowest question (median of its runs)',
      value: Math.max(...hearing),
      unit: 'ms',
      goal: 3,
    },
    {
      what: 'answered, slowest question (median of its runs)',
      value: Math.max(...answering),
      unit: 'ms',
      goal: 3,
    },
    {
      what: 'slowest of 20,000 hostile texts (over 5 ms: middle of 3)',
      value: Math.max(...slowest),
      unit: 'ms',
      goal: 50,
    },
  ]);
}
