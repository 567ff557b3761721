/**
 * German of texts that stand in English beside a value: the reason of a default, the name of a stage, what speaks for a box.
 * They are found by their English wording, so that a record keeps value and reason together; `{name}` stands for what differs.
 */
import { acousticPhrases } from './german-phrases/acoustic.ts'
import { boxPhrases } from './german-phrases/box.ts'
import { driverPhrases } from './german-phrases/driver.ts'
import { electricPhrases } from './german-phrases/electric.ts'
import { planPhrases } from './german-phrases/plan.ts'
import { safetyPhrases } from './german-phrases/safety.ts'
import { sizingPhrases } from './german-phrases/sizing.ts'
import { supplyPhrases } from './german-phrases/supply.ts'

export const germanPhrases: Readonly<Record<string, string>> = {
  ...acousticPhrases,
  ...sizingPhrases,
  ...driverPhrases,
  ...electricPhrases,
  ...supplyPhrases,
  ...boxPhrases,
  ...planPhrases,
  ...safetyPhrases
}
