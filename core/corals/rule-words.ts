import type { Finding } from './scene.ts';

/** What each rule is called wherever it is shown. */
export const ruleWords: Readonly<Record<Finding['rule'], string>> = {
  light: 'light',
  flow: 'flow',
  ground: 'sand or rock',
  sting: 'sting',
  growth: 'growth',
  shade: 'shade',
  walking: 'walking',
  pump: 'pump guards',
  chemistry: 'soft beside stony',
  people: 'people',
  law: 'law',
  room: 'room',
};
