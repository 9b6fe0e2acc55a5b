import { z } from 'zod';
import type { Kind } from '../../language/kinds.ts';
import acclimateDip from './acclimate-dip.json' with { type: 'json' };
import claim from './claim.json' with { type: 'json' };
import compatAnimals from './compat-animals.json' with { type: 'json' };
import coralAbout from './coral-about.json' with { type: 'json' };
import cycle from './cycle.json' with { type: 'json' };
import dayNight from './day-night.json' with { type: 'json' };
import equipment from './equipment.json' with { type: 'json' };
import feed from './feed.json' with { type: 'json' };
import firstStock from './first-stock.json' with { type: 'json' };
import fishTogether from './fish-together.json' with { type: 'json' };
import flow from './flow.json' with { type: 'json' };
import fragging from './fragging.json' with { type: 'json' };
import growth from './growth.json' with { type: 'json' };
import handling from './handling.json' with { type: 'json' };
import holiday from './holiday.json' with { type: 'json' };
import lightLamp from './light-lamp.json' with { type: 'json' };
import looks from './looks.json' with { type: 'json' };
import moving from './moving.json' with { type: 'json' };
import nutrients from './nutrients.json' with { type: 'json' };
import origin from './origin.json' with { type: 'json' };
import testKit from './test-kit.json' with { type: 'json' };
import { subjectCardSchema, type SubjectCard } from './subject-card.ts';

const data: Partial<Record<Kind, unknown>> = {
  'acclimate-dip': acclimateDip,
  claim,
  'compat-animals': compatAnimals,
  'coral-about': coralAbout,
  cycle,
  'day-night': dayNight,
  equipment,
  feed,
  'first-stock': firstStock,
  'fish-together': fishTogether,
  flow,
  fragging,
  growth,
  handling,
  holiday,
  'light-lamp': lightLamp,
  looks,
  moving,
  nutrients,
  origin,
  'test-kit': testKit,
};

const listSchema = z.array(subjectCardSchema);

/** The particular cards below each kind that has some. */
export const subjectCards: ReadonlyMap<Kind, readonly SubjectCard[]> = new Map(
  Object.entries(data).map(([kind, list]) => [kind as Kind, listSchema.parse(list)]),
);

/** The card of that label below a kind. */
export function subjectCard(kind: Kind, label: string): SubjectCard | undefined {
  return subjectCards.get(kind)?.find(({ card }) => card === label);
}
