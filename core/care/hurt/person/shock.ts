import type { Way } from '../../said.ts';
import { ANIMAL, LIMB, MY_BODY } from '../person-parts.ts';

/** Mains through a body. */
export const shock: readonly Way[] = [
  { all: [['electrocuted', '(?:electric|electrical) shock']], not: ['(?:avoid|prevent|risk of|hazard of)'] },
  {
    all: [
      [
        String.raw`(?:feel|felt|feeling|get|got|getting|gave me|gives me|gets me) (?:an? )?(?:little |small |mild |big |electric )?(?:tingl\w*|zaps?|shocks?|buzz|jolts?)`,
      ],
    ],
    not: ['(?:can|could|will|would|might) (?:i|you|we|it|they) (?:\\w+ )?(?:get|feel|give)'],
  },
  {
    all: [
      [String.raw`(?:feels?|felt|feeling) (?:\w+ ){0,5}(?:electricity|electric(?! blue)|current|voltage)`],
    ],
    not: ['from the (?:pump|wavemaker|powerhead)'],
  },
  {
    all: [[String.raw`(?:got|get|gets|getting|been|was|were|am|being|just) (?:shocked|zapped)`]],
    not: [
      String.raw`${ANIMAL}s? (?:\w+ ){0,2}(?:shocked|zapped)`,
      'shocked (?:how|that|when|to (?:see|hear|find))',
      'shocked (?:by|at|to see) (?:the |how |that )?(?:\\w+ )?(?:prices?|cost|bill|growth|color|colour|size|much|how)',
    ],
  },
  {
    all: [
      [
        String.raw`(?:shocks|shocked|zaps|zapped|shocking|zapping) (?:me|us|him|my (?!${ANIMAL}|coral|tank|reef)\w+)`,
      ],
    ],
  },
  {
    all: [
      [MY_BODY, String.raw`${LIMB}`, 'touch\\w*'],
      [
        String.raw`(?:it|tank|water|lamp|light|fixture|pump|heater|sump|metal|hood) (?:just |always |really )*(?:zaps?|zapped|shocks?|shocked|gives (?:off )?(?:a )?(?:shocks?|jolts?|tingles?))`,
      ],
    ],
    not: [String.raw`(?:shock|zap)\w* (?:my |the )?(?:${ANIMAL}|acro|sps|lps)`],
  },
  {
    all: [
      [
        String.raw`(?:shock(?:s|ed)?|zap(?:s|ped)?) (?:when|whenever|every ?time|as|while) (?:i|we|he|she|you|my \w+) (?:\w+ )?(?:touch|put|reach|stick|clean)\w*`,
      ],
    ],
  },
  {
    all: [
      ['tingl\\w*', 'prickl\\w*'],
      [MY_BODY, 'water', 'tank', 'i'],
    ],
    not: ['lights?'],
  },
];
