/**
 * Lists of words that stand in several places of the contract, each under one name. An open list grows without breaking a
 * caller: the contract gives the form of a word and names those known today.
 */
import { ratingKinds } from '../../contract/amplifiers/words.ts'
import {
  boardIds,
  boxShapes,
  faceNames,
  inchStyles,
  panelGrains,
  paperUnits,
  shellFaces,
  strategies
} from '../../contract/boxes/words.ts'
import { cautionCodes } from '../../contract/cautions/catalogue.ts'
import { coilConnections, vasAirs } from '../../contract/drivers/words.ts'
import { alignmentIds, chamberNames, filterFamilies, limitNames, sizedKinds } from '../../contract/enclosures/words.ts'
import { endModels, endSituations, portMouths, slotWalls } from '../../contract/ports/words.ts'
import { sourceIds } from '../../contract/sources/source.ts'
import {
  amplifierClasses,
  batteryChemistries,
  bodies,
  cableLimits,
  conductors,
  drives,
  fusePolicies,
  fuseTypes,
  gaugeSystems,
  insulationMaterials,
  metricResistances,
  runSpaces
} from '../../contract/supply/words.ts'
import {
  billParts,
  designGoals,
  plannedKinds,
  portShapes,
  radiatorFaces,
  rejectionRules,
  searchedKinds
} from '../../contract/systems/words.ts'
import { problemKinds } from '../wire/problem/problem-kinds.ts'
import type { JsonObject } from './json-tree.ts'

interface Vocabulary {
  readonly words: readonly string[]
  readonly description: string
  /** New words may come with any version. */
  readonly open?: boolean
}

const vocabularies: Readonly<Record<string, Vocabulary>> = {
  AlignmentId: { words: alignmentIds, description: 'An alignment; /v1/reference/alignments describes each.' },
  AmplifierClass: { words: amplifierClasses, description: 'Class of an output stage.' },
  BatteryChemistry: { words: batteryChemistries, description: 'What a battery is made of.' },
  BillPart: { words: billParts, description: 'What a row of the bill is.', open: true },
  BoardId: { words: boardIds, description: 'A board; /v1/reference/materials describes each.' },
  BoxKind: { words: plannedKinds, description: 'Kind of box a plan can be made for.' },
  BoxShape: { words: boxShapes, description: 'Shape of a box.' },
  BoxStrategy: { words: strategies, description: 'Which way a box grows where there is a choice.' },
  CableLimit: { words: cableLimits, description: 'What decides the size of a cable.' },
  CautionCode: {
    words: cautionCodes,
    description: 'Code of a caution; /v1/cautions documents each.',
    open: true
  },
  CautionLevel: {
    words: ['note', 'care', 'stop'],
    description: '`note`: know this. `care`: change or watch it. `stop`: do not build or switch this on.'
  },
  ChamberName: { words: chamberNames, description: 'A chamber of an enclosure.' },
  ChassisBody: { words: bodies, description: 'What the body of the vehicle is made of.' },
  CoilConnection: { words: coilConnections, description: 'How the coils of a driver are joined.' },
  Conductor: { words: conductors, description: 'Metal of a conductor.' },
  DesignGoal: { words: designGoals, description: 'What a search is after.' },
  EnclosureKind: { words: sizedKinds, description: 'Kind of an enclosure.' },
  FaceName: { words: faceNames, description: 'A face of a box.' },
  FilterFamily: { words: filterFamilies, description: 'Family of a filter.' },
  FusePolicy: { words: fusePolicies, description: 'How near to its ampacity a cable may be fused.' },
  FuseType: { words: fuseTypes, description: 'Type of a fuse; /v1/reference/fuses describes each.' },
  GaugeSystem: { words: gaugeSystems, description: 'Series of cable sizes.' },
  InchStyle: { words: inchStyles, description: 'How inches are written.' },
  InsulationMaterial: { words: insulationMaterials, description: 'Insulation of a cable.' },
  LimitName: { words: limitNames, description: 'What ends the level.' },
  MetricResistance: { words: metricResistances, description: 'Where the resistance of a metric cable comes from.' },
  PanelGrain: { words: panelGrains, description: 'Which way the grain of a panel runs.' },
  PaperUnits: { words: paperUnits, description: 'Units on paper.' },
  PortEndModel: { words: endModels, description: 'How the ends of a port are calculated.' },
  PortEndSituation: { words: endSituations, description: 'What an end of a port opens into.' },
  PortMouth: { words: portMouths, description: 'Edge of a mouth.' },
  PortShape: { words: portShapes, description: 'Shape of a port.' },
  ProblemCode: {
    words: Object.keys(problemKinds),
    description: 'Code of a problem; /v1/problems documents each.',
    open: true
  },
  RatedPower: {
    words: ['continuous', 'peak', 'unknown'],
    description: 'What a power of a data sheet stands for; peak figures are refused.'
  },
  RatingKind: { words: ratingKinds, description: 'What kind of figure a rated power is.' },
  RadiatorFace: { words: radiatorFaces, description: 'Where passive radiators stand in a box.' },
  RejectionRule: { words: rejectionRules, description: 'Why a system was not chosen.', open: true },
  RunSpace: { words: runSpaces, description: 'A space that a cable runs through.' },
  SearchedKind: { words: searchedKinds, description: 'Kind of box that a search weighs.' },
  ShellFace: { words: shellFaces, description: 'A face of a box.' },
  SlotWalls: { words: slotWalls, description: 'Which walls a slot has of its own.' },
  SourceId: {
    words: sourceIds,
    description: 'Id of a source; /v1/reference/sources gives each.',
    open: true
  },
  VasAir: { words: vasAirs, description: 'The air that a volume of compliance was stated for.' },
  VehicleDrive: { words: drives, description: 'What drives the vehicle.' }
}

const key = (words: readonly unknown[]) => words.join('\n')
const nameByWords = new Map(Object.entries(vocabularies).map(([name, { words }]) => [key(words), name]))

/** Components of the contract, one a list. */
export function vocabularyComponents(): JsonObject {
  return Object.fromEntries(
    Object.entries(vocabularies).map(([name, { words, description, open = false }]) => [
      name,
      open
        ? {
            type: 'string',
            description: `${description} More may come with any version; take what you do not know as it is.`,
            pattern: '^[a-z0-9]+(-[a-z0-9]+)*$',
            maxLength: 100,
            'x-known-values': [...words]
          }
        : { type: 'string', description, enum: [...words] }
    ])
  )
}

/** A list of words written out becomes a reference to its name, with what this place says of it beside. */
export function namedWords(schema: JsonObject): JsonObject {
  const { enum: words, type: _type, ...rest } = schema
  const name = Array.isArray(words) ? nameByWords.get(key(words)) : undefined
  return name === undefined ? schema : { $ref: `#/components/schemas/${name}`, ...rest }
}
