import { createRequire } from 'node:module';
import type { FactoryFunctionMap, MathNode } from 'mathjs/number';
import { Problem } from '../problem.ts';
import { say } from '../wording/say.ts';

type Parse = (text: string) => MathNode;

/**
 * The parser of mathjs alone, built from its own list of what a parser needs. The public entry `mathjs/number` makes
 * every function of the library as it loads, which takes 20 MB and 0.15 s more (Node 20); so this goes in by file name
 * and holds for the pinned version. It is loaded with the first text that is more than one number.
 */
function loadParser(): Parse {
  const inside = createRequire(createRequire(import.meta.url).resolve('mathjs/number'));
  const { create } = inside('./core/create.js') as Pick<typeof import('mathjs/number'), 'create'>;
  const { parseDependencies } = inside('./entry/dependenciesNumber/dependenciesParse.generated.js') as {
    readonly parseDependencies: FactoryFunctionMap;
  };
  return create({ parseDependencies }).parse as Parse;
}

let loaded: Parse | undefined;

const parse: Parse = (text) => (loaded ??= loadParser())(text);

/** A number with the unit it carries: `unit` is -1 for a bare number, else an index into the caller's units. */
export interface Term {
  readonly value: number;
  readonly unit: number;
}

/** Limits on what a member may write as arithmetic. */
const MAX_LENGTH = 200;
const MAX_DEPTH = 20;

/** One number, with a unit or without: by far the most common text, read without the parser. */
const PLAIN = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*(?:u(\d+))?\s*$/;

const PLACEHOLDER = /^u(\d+)$/;

/**
 * Works out guarded arithmetic: numbers, `+ - * / ^`, parentheses, percent and unit placeholders `u0`, `u1`, ...
 * The text is parsed, never evaluated; any other construct is refused.
 *
 * `convert(unit)` gives the factor that takes a number in that unit to the unit of index 0, so that
 * "10 gal - 3 L" can be added up. `3 * 20 u0 - 10 %` -> `{ value: 54, unit: 0 }`.
 *
 * @throws Problem when it does not parse, is too long or too deep, mixes numbers with and without units in a sum,
 *   multiplies unit by unit, or does not end in a finite number.
 */
export function arithmetic(text: string, field: string, convert: (unit: number) => number): Term {
  if (text.length > MAX_LENGTH) {
    throw new Problem(say('convert.tooLongForNumber'), {
      field,
      limit: say('convert.atMostCharacters', { most: MAX_LENGTH }),
    });
  }
  const plain = PLAIN.exec(text);
  if (plain !== null)
    return { value: Number(plain[1]), unit: plain[2] === undefined ? -1 : Number(plain[2]) };
  const tree = parseText(text, field);
  const term = walk(tree, { field, convert }, 0);
  if (!Number.isFinite(term.value)) throw unreadable(field);
  return term;
}

interface Scope {
  readonly field: string;
  readonly convert: (unit: number) => number;
}

function parseText(text: string, field: string): MathNode {
  try {
    return parse(text);
  } catch {
    throw unreadable(field);
  }
}

function walk(node: MathNode, scope: Scope, depth: number): Term {
  if (depth > MAX_DEPTH) throw unreadable(scope.field);
  const shape = node as unknown as NodeShape;
  switch (shape.type) {
    case 'ConstantNode':
      if (typeof shape.value !== 'number') throw unreadable(scope.field);
      return { value: shape.value, unit: -1 };
    case 'SymbolNode': {
      const unit = PLACEHOLDER.exec(shape.name ?? '')?.[1];
      if (unit === undefined) throw unreadable(scope.field);
      return { value: 1, unit: Number(unit) };
    }
    case 'ParenthesisNode':
      return walk(must(shape.content, scope.field), scope, depth + 1);
    case 'OperatorNode':
      return operate(
        shape.fn ?? '',
        (shape.args ?? []).map((arg) => walk(arg, scope, depth + 1)),
        scope,
      );
    default:
      throw unreadable(scope.field);
  }
}

function operate(operator: string, args: readonly Term[], scope: Scope): Term {
  const [a, b] = args;
  if (a === undefined) throw unreadable(scope.field);
  if (operator === 'unaryMinus') return { value: -a.value, unit: a.unit };
  if (operator === 'unaryPlus') return a;
  if (b === undefined) throw unreadable(scope.field);
  switch (operator) {
    case 'add':
      return sum(a, b, 1, scope);
    case 'subtract':
      return sum(a, b, -1, scope);
    case 'multiply':
      if (a.unit >= 0 && b.unit >= 0) throw mixed(scope.field);
      return { value: a.value * b.value, unit: Math.max(a.unit, b.unit) };
    case 'divide':
      return divide(a, b, scope);
    case 'pow':
      if (a.unit >= 0 || b.unit >= 0) throw mixed(scope.field);
      return { value: a.value ** b.value, unit: -1 };
    default:
      throw unreadable(scope.field);
  }
}

function sum(a: Term, b: Term, sign: 1 | -1, scope: Scope): Term {
  if (a.unit === b.unit) return { value: a.value + sign * b.value, unit: a.unit };
  if (a.unit < 0 || b.unit < 0) throw mixed(scope.field);
  return { value: a.value * scope.convert(a.unit) + sign * b.value * scope.convert(b.unit), unit: 0 };
}

function divide(a: Term, b: Term, scope: Scope): Term {
  if (b.unit < 0) return { value: a.value / b.value, unit: a.unit };
  if (a.unit < 0) throw mixed(scope.field);
  const ratio = (a.value * scope.convert(a.unit)) / (b.value * scope.convert(b.unit));
  return { value: ratio, unit: -1 };
}

/** The parts of a mathjs node this file reads; mathjs types the union too loosely to narrow. */
interface NodeShape {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly fn?: string;
  readonly content?: MathNode;
  readonly args?: readonly MathNode[];
}

function must<T>(value: T | undefined, field: string): T {
  if (value === undefined) throw unreadable(field);
  return value;
}

function unreadable(field: string): Problem {
  return new Problem(say('convert.noNumberWithUnit'), {
    field,
    hint: say('convert.hintSums'),
  });
}

function mixed(field: string): Problem {
  return new Problem(say('convert.mixedUnits'), {
    field,
    hint: say('convert.hintUnitEach'),
  });
}
