import { primer } from '../../../core/care/primers/cards.ts';
import { met } from '../../../core/language/met.ts';
import { hazardCautions } from '../../coral/hazard-lines.ts';
import { cardAnswer } from '../../primer/card-answer.ts';
import { rangeCommand } from '../../light/range.ts';
import { call } from '../../called.ts';
import type { Row } from '../row.ts';
import { coralsOf, originOf } from './coral-said.ts';

export const coralNewRows: readonly Row[] = [
  {
    kind: 'acclimate-dip',
    label: 'ask.kindAcclimateDip',
    uses: ['corals'],
    answer: (frame, context) => {
      const { scanned } = frame.reading;
      const named = coralsOf(frame);
      const [one] = named;
      const isDipped = met(
        scanned,
        'deeds.dips',
        'deeds.quarantines',
        'deeds.treats',
        'hardware.hospitalTank',
      );
      if (one !== undefined && !isDipped && met(scanned, 'gear.lamp', 'places.bright', 'sums.lightAmount'))
        return call(rangeCommand, { coral: one.name, origin: originOf(frame) }, context);
      const card = cardAnswer(primer(isDipped ? 'dips and quarantine' : 'acclimation'));
      const hazards = hazardCautions(named.flatMap(({ entries }) => entries));
      return { ...card, dangers: [...hazards, ...card.dangers] };
    },
  },
];
