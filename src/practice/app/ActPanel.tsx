import { useState } from 'preact/hooks';
import { type Phase, phases } from '../../kernel/electrics/phases.ts';
import type { Action, Joint, PlainAct } from '../case/action.ts';
import type { Machine } from '../case/machine.ts';
import type { AxisState } from '../simulator/axis-state.ts';
import { actionText, actTexts, joinText } from '../words/acts.ts';
import { isOn, jointsOf } from './joints.ts';

interface Props {
  machine: Machine;
  state: AxisState;
  onAct: (action: Action) => void;
}

/** What a person can do to the machine, apart from measuring. */
export function ActPanel({ machine, state, onAct }: Props) {
  const [wide] = useState(() => matchMedia('(min-width: 46rem)').matches);
  const groups: [title: string, acts: PlainAct[]][] = [
    [
      'Supply and lock',
      [
        state.supply ? 'switch-off' : 'switch-on',
        machine.lockedOut ? 'take-lock-off' : 'lock-out',
        'wait-label',
        'wait-minute',
        'prove-meter',
      ],
    ],
    ['Axis and trials', [state.axisSupported ? 'take-support-away' : 'support', 'reset', 'enable', 'run']],
    ['Look and feel', ['look', 'mechanics', 'thermometer', 'wait-room-temperature', 'dry-connector']],
  ];
  if (machine.axis.parameters.idleCores.length > 0) {
    groups.push(['Motor cable', ['idle-cores-to-pe', state.bent ? 'let-cable-go' : 'bend-cable']]);
  }
  return (
    <section class="practice-acts" aria-labelledby="acts">
      <h2 id="acts" tabIndex={-1}>
        At the machine
      </h2>
      {groups.map(([title, acts], position) => (
        <details key={title} class="more" open={wide || position === 0}>
          <summary>{title}</summary>
          <div class="act-buttons">
            {/* Keyed by place: when "off" turns into "on" under the finger, the button keeps the focus. */}
            {acts.map((act, place) => (
              <button key={String(place)} type="button" class="plain" onClick={() => onAct({ act })}>
                {actTexts[act]}
              </button>
            ))}
          </div>
        </details>
      ))}
      <details class="more" open={wide}>
        <summary>Leads and connectors</summary>
        <div class="act-buttons">
          {jointsOf(machine.axis.parameters).map((joint: Joint) => {
            const on = !isOn(state, joint);
            return (
              <button key={joint} type="button" class="plain" onClick={() => onAct({ act: 'join', joint, on })}>
                {joinText(joint, on)}
              </button>
            );
          })}
        </div>
      </details>
      <details class="more">
        <summary>Bonding wires</summary>
        <div class="act-buttons">
          {[...phases, undefined].map((except: Phase | undefined) => {
            const action: Action = except === undefined ? { act: 'bond' } : { act: 'bond', except };
            return (
              <button key={except ?? 'off'} type="button" class="plain" onClick={() => onAct(action)}>
                {actionText(action)}
              </button>
            );
          })}
        </div>
      </details>
    </section>
  );
}
