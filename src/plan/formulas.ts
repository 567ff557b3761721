/** Every formula that stands behind a figure of an answer; each record lives in the room that owns the formula. */
import { amplifierFormulas } from '../domain/amplifier/formulas.ts'
import { boxLayoutFormulas } from '../domain/box/layout/formulas.ts'
import { panelFormulas } from '../domain/box/stiffness/formulas.ts'
import { cabinFormulas } from '../domain/cabin/formulas.ts'
import { cableFormulas } from '../domain/circuit/choice/formulas.ts'
import { fuseFormulas } from '../domain/circuit/fuse/formulas.ts'
import { feederFormulas } from '../domain/circuit/graph/formulas.ts'
import { currentFormulas } from '../domain/circuit/load/formulas.ts'
import { coilFormulas } from '../domain/coils/formulas.ts'
import { driverFormulas } from '../domain/driver/formulas.ts'
import { limitFormulas } from '../domain/enclosure/limits/formulas.ts'
import { modelFormulas } from '../domain/enclosure/model/formulas.ts'
import { responseFormulas } from '../domain/enclosure/response/formulas.ts'
import { sizingFormulas } from '../domain/enclosure/sizing/formulas.ts'
import type { Formula } from '../domain/formula.ts'
import { portFormulas } from '../domain/port/formulas.ts'
import { sheetFormulas } from '../domain/sheet/formulas.ts'
import { signalFormulas } from '../domain/signal/formulas.ts'

import { scoreFormulas } from './designer/formulas.ts'

export const formulas: readonly Formula[] = [
  ...driverFormulas,
  ...modelFormulas,
  ...responseFormulas,
  ...limitFormulas,
  ...sizingFormulas,
  ...portFormulas,
  ...cabinFormulas,
  ...boxLayoutFormulas,
  ...panelFormulas,
  ...sheetFormulas,
  ...coilFormulas,
  ...amplifierFormulas,
  ...signalFormulas,
  ...cableFormulas,
  ...fuseFormulas,
  ...currentFormulas,
  ...feederFormulas,
  ...scoreFormulas
]
