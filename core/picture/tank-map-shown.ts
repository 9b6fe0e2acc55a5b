import { ruleWords } from '../corals/rule-words.ts';
import { diameterAfter } from '../corals/growth.ts';
import type { Finding, Placed, Scene, Verdict } from '../corals/scene.ts';
import { stingReach } from '../corals/sting-reach.ts';

/** The worst first. */
export const verdicts = ['move', 'watch', 'settled'] as const satisfies readonly Verdict[];

/** A coral as the map draws it. */
export interface Shown {
  readonly coral: Placed;
  /** The worst that is said of it. */
  readonly verdict: Verdict;
  /** What says so, each once; none for what is settled. */
  readonly rules: readonly Finding['rule'][];
  /** How far its sting goes beyond its open width, cm at full stretch in still water; 0 for none. */
  readonly reachCm: number;
  /** Its width in a year at the high end of its growth, cm. */
  readonly yearCm: number;
}

/** All that is said against one coral or one pair. */
export interface Trouble {
  readonly corals: readonly Placed[];
  readonly verdict: Exclude<Verdict, 'settled'>;
  /** What says so, each once, the worst first. */
  readonly rules: readonly Finding['rule'][];
}

/** The corals in their order, each with the worst verdict of the findings. */
export function shownOf({ corals }: Scene, findings: readonly Finding[]): readonly Shown[] {
  const about = new Map<number, Finding[]>(corals.map(({ id }) => [id, []]));
  for (const finding of findings) for (const id of finding.corals) about.get(id)?.push(finding);
  return corals.map((coral) => {
    const said = about.get(coral.id) ?? [];
    const verdict = verdicts.find((one) => said.some((finding) => finding.verdict === one)) ?? 'settled';
    const worst = verdict === 'settled' ? [] : said.filter((finding) => finding.verdict === verdict);
    return {
      coral,
      verdict,
      rules: [...new Set(worst.map(({ rule }) => rule))],
      reachCm: stingReach(coral.entry).highCm,
      yearCm: diameterAfter(coral.entry, coral.diameterCm, 12).high,
    };
  });
}

/** What is not settled, one for each coral or pair, the worst first and else in the order of the findings. */
export function troublesOf({ corals }: Scene, findings: readonly Finding[]): readonly Trouble[] {
  const byId = new Map(corals.map((coral) => [coral.id, coral]));
  const found = new Map<string, Trouble>();
  for (const verdict of ['move', 'watch'] as const) {
    for (const finding of findings) {
      if (finding.verdict !== verdict) continue;
      const about = finding.corals.flatMap((id) => byId.get(id) ?? []);
      const key = about
        .map(({ id }) => id)
        .sort((a, b) => a - b)
        .join();
      const before = found.get(key);
      const rules = [...new Set([...(before?.rules ?? []), finding.rule])];
      found.set(key, { ...(before ?? { corals: about, verdict }), rules });
    }
  }
  return [...found.values()];
}

/** "Torch coral and Plate coral (sting, growth)". */
export function troubleWords({ corals, rules }: Trouble): string {
  return `${corals.map(({ label }) => label).join(' and ')} (${rules.map((rule) => ruleWords[rule]).join(', ')})`;
}

/** "3 to move, 1 to watch, 8 settled", and nothing of what there is none of. */
export function countOf(shown: readonly Shown[]): string {
  return verdicts
    .map((verdict) => [shown.filter((one) => one.verdict === verdict).length, verdict] as const)
    .filter(([count]) => count > 0)
    .map(([count, verdict]) => `${count} ${verdict === 'settled' ? verdict : `to ${verdict}`}`)
    .join(', ');
}
