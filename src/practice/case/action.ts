import type { Phase } from '../../kernel/electrics/phases.ts';
import type { Damage, InspectedPart } from '../../kernel/vocabulary.ts';
import type { Core } from '../simulator/axis-state.ts';
import type { Measurement, Mode } from '../simulator/measure.ts';
import type { Setting } from './setting.ts';

/** An act without details: one press of a button. */
export type PlainAct =
  | 'switch-off'
  | 'lock-out'
  | 'take-lock-off'
  | 'prove-meter'
  | 'wait-minute'
  | 'wait-label'
  | 'wait-room-temperature'
  | 'support'
  | 'take-support-away'
  | 'look'
  | 'mechanics'
  | 'dry-connector'
  | 'idle-cores-to-pe'
  | 'bend-cable'
  | 'let-cable-go'
  | 'thermometer'
  | 'switch-on'
  | 'reset'
  | 'enable'
  | 'run';

/** A lead or plug that can be taken off and put on again. */
export type Joint =
  | 'leads'
  | `lead-${Core}`
  | 'motor-plug'
  | 'feedback-drive'
  | 'feedback-device'
  | 'idle-cores'
  | 'braking-resistor'
  | 'dc-link'
  | 'neighbour-leads'
  | 'neighbour-feedback'
  | 'filter';

/** One act of a person at the practice machine, as it is stored; a list of acts reproduces the whole run. */
export type Action =
  | { act: PlainAct }
  | { act: 'join'; joint: Joint; on: boolean }
  /** Connects all cores except this one, PE and screen to ground at the drive end; without `except` it removes the bonds. */
  | { act: 'bond'; except?: Phase }
  | { act: 'measure'; mode: Mode; red: string; black: string; setting: Setting };

/** What a person sees of an act at once; not whether it was wise. */
export type Result =
  | { code: 'done' }
  | { code: 'refused'; why: Refusal }
  | { code: 'seen'; seen: Record<InspectedPart, Damage> }
  | { code: 'moves-freely' }
  | { code: 'temperature'; celsius: number }
  | { code: 'tripped' | 'other-message' | 'no-trip' }
  | { code: 'reading'; shown: Measurement };

/** Why an act is impossible, for a person and the robot alike. */
export type Refusal = 'power-is-on' | 'power-is-off' | 'lock-is-on' | 'no-lock' | 'trip-stands' | 'leads-are-on';
