import type { Kind } from '../../core/language/kinds.ts';
import type { SlotName } from '../../core/language/slots.ts';
import type { Row } from './row.ts';
import { changeRows } from './rows/changes.ts';
import { claimRows } from './rows/claim.ts';
import { convertRows } from './rows/convert.ts';
import { coralAboutRows } from './rows/coral-about.ts';
import { coralGrowRows } from './rows/coral-grow.ts';
import { coralLightRows } from './rows/coral-light.ts';
import { coralNewRows } from './rows/coral-new.ts';
import { coralPairRows } from './rows/coral-pair.ts';
import { coralPlaceRows } from './rows/coral-place.ts';
import { coralRecordRows } from './rows/coral-record.ts';
import { dosingRows } from './rows/dosing.ts';
import { emergencyRows } from './rows/emergencies.ts';
import { forecastRows } from './rows/forecast.ts';
import { instrumentRows } from './rows/instruments.ts';
import { keepingRows } from './rows/keeping.ts';
import { lightRows } from './rows/light.ts';
import { logRows } from './rows/log.ts';
import { movedRows } from './rows/moved.ts';
import { overdoseRows } from './rows/overdose.ts';
import { readingRows } from './rows/readings.ts';
import { routineRows } from './rows/changes-routine.ts';
import { remindRows } from './rows/remind.ts';
import { safetyRows } from './rows/safety.ts';
import { salinityRows } from './rows/salinity.ts';
import { solutionRows } from './rows/solution.ts';
import { symptomRows } from './rows/symptoms.ts';
import { talkRows } from './rows/talk.ts';
import { tankPlanRows } from './rows/tank-plan.ts';
import { tankSetupRows } from './rows/tank-setup.ts';
import { thinRows } from './rows/thin.ts';
import { toldRows } from './rows/told.ts';
import { useRows } from './rows/use.ts';
import { volumeRows } from './rows/volume.ts';

/** What is done with each kind of question: one row a kind. */
const rows: ReadonlyMap<Kind, Row> = new Map(
  [
    ...changeRows,
    ...claimRows,
    ...convertRows,
    ...coralAboutRows,
    ...coralGrowRows,
    ...coralLightRows,
    ...coralNewRows,
    ...coralPairRows,
    ...coralPlaceRows,
    ...coralRecordRows,
    ...dosingRows,
    ...emergencyRows,
    ...forecastRows,
    ...instrumentRows,
    ...keepingRows,
    ...lightRows,
    ...logRows,
    ...movedRows,
    ...overdoseRows,
    ...readingRows,
    ...remindRows,
    ...routineRows,
    ...safetyRows,
    ...salinityRows,
    ...solutionRows,
    ...symptomRows,
    ...talkRows,
    ...tankPlanRows,
    ...tankSetupRows,
    ...thinRows,
    ...toldRows,
    ...useRows,
    ...volumeRows,
  ].map((row) => [row.kind, row]),
);

export function rowOf(kind: Kind): Row | undefined {
  return rows.get(kind);
}

/** Slots a kind's answer rests on; none for a kind without a row. */
export function usesOf(kind: Kind): readonly SlotName[] {
  return rows.get(kind)?.uses ?? [];
}
