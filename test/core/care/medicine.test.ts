import { describe, expect, it } from 'vitest';
import { medicineDoses } from './medicine.ts';

describe('the scan for medicine doses', () => {
  it.each(['Add 0.5 mg/L copper.', 'Use 2 mL formalin per gallon', 'chloroquine 60 mg a day'])(
    'finds: %s',
    (text) => expect(medicineDoses(text)).toHaveLength(1),
  );

  it.each(['No copper in a reef tank. Change 20 L.', 'Ammonia 0.75 mg/L', 'No antibiotic without a vet'])(
    'lets pass: %s',
    (text) => expect(medicineDoses(text)).toEqual([]),
  );
});
