/** Letters beside each other on a keyboard, for slips that fingers make. */
const BESIDE: Readonly<Record<string, string>> = {
  a: 'sq',
  b: 'vn',
  c: 'xv',
  d: 'sf',
  e: 'wr',
  f: 'dg',
  g: 'fh',
  h: 'gj',
  i: 'uo',
  j: 'hk',
  k: 'jl',
  l: 'k',
  m: 'n',
  n: 'bm',
  o: 'ip',
  p: 'o',
  q: 'wa',
  r: 'et',
  s: 'ad',
  t: 'ry',
  u: 'yi',
  v: 'cb',
  w: 'qe',
  x: 'zc',
  y: 'tu',
  z: 'x',
};

/** The share of longer words that is mistyped. */
const SLIPS = 0.18;

/**
 * A copy of a message as it might have been typed in more haste: slips in words of four letters and more, marks left out.
 * Numbers stay. `random` decides, so the same seed gives the same copy.
 */
export function hasty(text: string, random: () => number): string {
  const typed = text.replace(/\p{L}{4,}/gu, (word) => (random() < SLIPS ? mistyped(word, random) : word));
  return random() < 0.5 ? typed.replace(/[?!;]|[.,](?!\d)/g, '') : typed;
}

function mistyped(word: string, random: () => number): string {
  const at = 1 + Math.floor(random() * (word.length - 2));
  const way = Math.floor(random() * 4);
  const [here = '', next = ''] = [word[at], word[at + 1]];
  if (way === 0) return word.slice(0, at) + word.slice(at + 1);
  if (way === 1) return word.slice(0, at) + next + here + word.slice(at + 2);
  if (way === 2) return word.slice(0, at) + here + here + word.slice(at + 1);
  const beside = BESIDE[here.toLowerCase()] ?? here;
  return word.slice(0, at) + (beside[Math.floor(random() * beside.length)] ?? here) + word.slice(at + 1);
}

/** A copy of a message with a share of its words left out: what is wanted hangs on no single word. */
export function sparse(text: string, share: number, random: () => number): string {
  const kept = text.split(/\s+/).filter(() => random() >= share);
  return kept.length === 0 ? text : kept.join(' ');
}
