import { CARBON } from '../../core/corals/rules/chemistry.ts';
import type { Finding, Scene, Verdict } from '../../core/corals/scene.ts';
import { ruleWords } from '../../core/corals/rule-words.ts';
import { firstSentence, sentencesOf } from '../../core/words/sentence.ts';
import type { Fact } from '../answer.ts';
import { shortLimits } from '../short/limits.ts';

/** Findings are sorted: the first decides. */
export function verdictOf(findings: readonly Finding[]): Verdict {
  return findings[0]?.verdict ?? 'settled';
}

export function problemsIn(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(({ verdict }) => verdict !== 'settled');
}

/** What was found, in its first sentence. */
export function factOf({ rule, reason, verdict }: Finding): Fact {
  return { label: ruleWords[rule], value: firstSentence(reason), verdict };
}

/** The whole of what its first sentence does not say. */
export function reasonLines(findings: readonly Finding[]): readonly string[] {
  return findings
    .filter(({ reason }) => sentencesOf(reason).length > 1)
    .map(({ rule, reason }) => `${ruleWords[rule]}: ${reason}`);
}

/** Flow and law are told, not judged. */
export function isTold({ rule }: Finding): boolean {
  return rule === 'flow' || rule === 'law';
}

/** A coral's label by its id. */
export type LabelOf = (id: number) => string;

export function labelsOf({ corals }: Scene): LabelOf {
  const labels = new Map(corals.map(({ id, label }) => [id, label]));
  return (id) => labels.get(id) ?? String(id);
}

/**
 * The smallest change that cures each problem, the worst first, each said once; of two gaps for a pair the wider. Then
 * what else is to say of each.
 */
export function curesOf(findings: readonly Finding[], labelOf: LabelOf): readonly string[] {
  const problems = problemsIn(findings);
  const ofCorals = new Map<string, Finding[]>();
  for (const one of problems) ofCorals.set(keyOf(one), [...(ofCorals.get(keyOf(one)) ?? []), one]);
  const cures = problems.flatMap((one) => {
    const { corals, cure } = one;
    const others = ofCorals.get(keyOf(one)) ?? [];
    if (cure === undefined || others.some((other) => outdoes(other, one))) return [];
    const who = corals.map(labelOf).join(' and ');
    const [first = '', ...more] = stepsOf(`${who}: ${cure.replace(` ${CARBON}`, '')}`);
    return [{ first, more: more.map((sentence) => `${who}: ${sentence}`) }];
  });
  const carbon = problems.some(({ rule }) => rule === 'chemistry') ? [CARBON] : [];
  return [...new Set([...cures.map(({ first }) => first), ...carbon, ...cures.flatMap(({ more }) => more)])];
}

/** A cure as one step, or a sentence each where it is too long for one. */
function stepsOf(cure: string): readonly string[] {
  return cure.length <= shortLimits.step ? [cure] : sentencesOf(cure);
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
