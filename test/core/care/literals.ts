/** A text of the program as it is written: a string, or a template whose holes are shown as `1`. */
export interface Literal {
  readonly line: number;
  readonly text: string;
}

/** After one of these a slash begins a pattern, not a division. */
const BEFORE_PATTERN = /(?:^|[(,=:[!&|?{};+\-*%~^<>]|=>|\b(?:return|typeof|case|in|of|void|delete))$/;
const ESCAPES: Readonly<Record<string, string>> = { n: '\n', t: '\t', r: '\r' };
/** Stands for a hole in a template: whatever is put there can be a number. */
const HOLE = '1';

/** Every string and template of a TypeScript source, those inside the holes of templates too. */
export function literalsIn(source: string): readonly Literal[] {
  const found: Literal[] = [];
  let at = 0;
  let line = 1;
  const step = (): string => {
    const letter = source[at] ?? '';
    if (letter === '\n') line += 1;
    at += 1;
    return letter;
  };
  const escaped = (): string => {
    const letter = step();
    if (letter === 'u' || letter === 'x') {
      const [whole = '', code = ''] =
        /^\{?([0-9a-fA-F]{2,6})\}?/.exec(source.slice(at, at + (letter === 'x' ? 2 : 8))) ?? [];
      const digits = letter === 'x' ? 2 : whole.startsWith('{') ? whole.length : 4;
      at += digits;
      return String.fromCodePoint(
        Number.parseInt(code.slice(0, whole.startsWith('{') ? 6 : digits), 16) || 32,
      );
    }
    return letter === '\n' ? '' : (ESCAPES[letter] ?? letter);
  };
  const quoted = (quote: string): void => {
    const from = line;
    let text = '';
    while (at < source.length && source[at] !== quote)
      text += source[at] === '\\' ? (step(), escaped()) : step();
    step();
    found.push({ line: from, text });
  };
  const template = (): void => {
    const from = line;
    let text = '';
    while (at < source.length && source[at] !== '`') {
      if (source.startsWith('${', at)) {
        at += 2;
        code('}');
        text += HOLE;
      } else text += source[at] === '\\' ? (step(), escaped()) : step();
    }
    step();
    found.push({ line: from, text });
  };
  const pattern = (): void => {
    let isClass = false;
    while (at < source.length && (source[at] !== '/' || isClass)) {
      if (source[at] === '\\') at += 1;
      else if (source[at] === '[') isClass = true;
      else if (source[at] === ']') isClass = false;
      at += 1;
    }
    at += 1;
  };
  /** Reads code up to the bracket that ends it. */
  const code = (end: string): void => {
    let before = '';
    let depth = 0;
    while (at < source.length) {
      if (source.startsWith('//', at)) {
        while (at < source.length && source[at] !== '\n') at += 1;
        continue;
      }
      if (source.startsWith('/*', at)) {
        while (at < source.length && !source.startsWith('*/', at)) step();
        at += 2;
        continue;
      }
      const letter = step();
      if (letter === end && depth === 0) return;
      if (letter === '{') depth += 1;
      if (letter === '}') depth -= 1;
      if (letter === "'" || letter === '"') quoted(letter);
      else if (letter === '`') template();
      else if (letter === '/' && BEFORE_PATTERN.test(before)) pattern();
      if (letter.trim() !== '') before = `${before}${letter}`.slice(-12);
      else if (/\w$/.test(before))
        before = /\b(?:return|typeof|case|in|of|void|delete)$/.test(before) ? before : `${before} `;
    }
  };
  code('');
  return found;
}
