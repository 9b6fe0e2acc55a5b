import { CARBON } from '../../core/corals/rules/chemistry.ts';
import type { Finding, Scene, Verdict } from '../../core/corals/scene.ts';
import { ruleWords } from '../../core/corals/rule-words.ts';
import { fewOf } from '../../core/corals/say.ts';
import type { Fact } from '../answer.ts';

/** Findings are sorted: the first decides. */
export function verdictOf(findings: readonly Finding[]): Verdict {
  return findings[0]?.verdict ?? 'settled';
}

export function problemsIn(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(({ verdict }) => verdict !== 'settled');
}

/** Flow and law are told, not judged. */
export function factOf({ rule, reason, verdict }: Finding): Fact {
  const judged = rule !== 'flow' && rule !== 'law';
  return { label: ruleWords[rule], value: reason, ...(judged ? { verdict } : {}) };
}

/** A coral's label by its id. */
export type LabelOf = (id: number) => string;

export function labelsOf({ corals }: Scene): LabelOf {
  const labels = new Map(corals.map(({ id, label }) => [id, label]));
  return (id) => labels.get(id) ?? String(id);
}

/** The smallest change that cures each problem, the worst first, each said once; of two gaps for a pair the wider. */
export function curesOf(findings: readonly Finding[], labelOf: LabelOf): readonly string[] {
  const problems = problemsIn(findings);
  const ofCorals = new Map<string, Finding[]>();
  for (const one of problems) ofCorals.set(keyOf(one), [...(ofCorals.get(keyOf(one)) ?? []), one]);
  const cures = problems.flatMap((one) => {
    const { corals, cure } = one;
    const others = ofCorals.get(keyOf(one)) ?? [];
    if (cure === undefined || others.some((other) => outdoes(other, one))) return [];
    const carbon = others.some((other) => other.rule === 'chemistry' && outdoes(one, other));
    return [`${corals.map(labelOf).join(' and ')}: ${cure}${carbon ? ` ${CARBON}` : ''}`];
  });
  return [...new Set(cures)];
}

/** The same for findings about the same corals, in whatever order. */
function keyOf({ corals }: Finding): string {
  return [...corals].sort((a, b) => a - b).join();
}

/** Of two findings about one pair: whether the gap that the first asks for answers the second as well. */
function outdoes(wider: Finding, narrower: Finding): boolean {
  const isSure = wider.verdict === 'move' || wider.rule === 'chemistry';
  if (wider === narrower || !isSure || wider.apartCm === undefined) return false;
  if (narrower.apartCm === undefined) return narrower.rule === 'growth' && narrower.verdict === 'watch';
  return (
    wider.apartCm > narrower.apartCm ||
    (wider.apartCm === narrower.apartCm && wider.rule === 'chemistry' && narrower.rule !== 'chemistry')
  );
}

/** What each rule's findings rest on, one line a rule. */
export function basisLines(findings: readonly Finding[]): readonly string[] {
  const rules = [...new Set(findings.map(({ rule }) => rule))];
  return rules.map((rule) => {
    const bases = new Set(findings.filter((one) => one.rule === rule).map(({ basis }) => basis));
    return `${ruleWords[rule]} rests on: ${[...bases].join('; ')}`;
  });
}

/** Harm to people, palytoxin first; one line for all corals it is said of, of whom few are named: the words must stay. */
export function peopleCautions(findings: readonly Finding[], labelOf: LabelOf): readonly string[] {
  const told = new Map<string, string[]>();
  for (const { rule, corals, reason } of findings) {
    if (rule !== 'people') continue;
    const label = labelOf(corals[0] ?? 0);
    const text = reason.slice(label.length + 2);
    told.set(text, [...(told.get(text) ?? []), label]);
  }
  const lines = [...told].map(([text, labels]) => `${fewOf(labels)}: ${text}`);
  return [...lines.filter(isPalytoxin), ...lines.filter((line) => !isPalytoxin(line))];
}

function isPalytoxin(line: string): boolean {
  return line.includes('palytoxin');
}

/** How many corals have each verdict as their worst. */
export function countWords({ corals }: Scene, findings: readonly Finding[]): string {
  const verdicts = corals.map(({ id }) => worstOf(id, findings));
  return (['move', 'watch', 'settled'] as const)
    .map((verdict) => [verdict, verdicts.filter((one) => one === verdict).length] as const)
    .filter(([, count]) => count > 0)
    .map(([verdict, count]) => `${count} ${verdict === 'settled' ? 'settled' : `to ${verdict}`}`)
    .join(', ');
}

/** The worst said of one coral: findings are sorted. */
export function worstOf(id: number, findings: readonly Finding[]): Verdict {
  return findings.find(({ corals }) => corals.includes(id))?.verdict ?? 'settled';
}
