import { useState } from 'preact/hooks';
import { lastIn } from '../../kernel/reading/last-in.ts';
import type { Action } from '../case/action.ts';
import type { Session } from '../case/session.ts';
import { inReach, terminals } from '../case/terminals.ts';
import type { Measurement } from '../simulator/measure.ts';
import { drawingTexts } from '../words/bench.ts';
import { AxisDrawing } from './AxisDrawing.tsx';
import { InstrumentDrawing } from './InstrumentDrawing.tsx';
import { type Knobs, type Lead, type Placed, settingOf, startKnobs } from './knobs.ts';
import { LeadChoice } from './LeadChoice.tsx';
import { LeadWires } from './LeadWires.tsx';
import { drawingSize } from './layout.ts';
import { MeterControls } from './MeterControls.tsx';
import { TerminalButton } from './TerminalButton.tsx';

interface Props {
  session: Session;
  onAct: (action: Action) => void;
}

/** The axis as drawn, with the leads of the instrument on it. */
export function Bench({ session, onAct }: Props) {
  const [next, setNext] = useState<Lead>('red');
  const [placed, setPlaced] = useState<Placed>({});
  const [knobs, setKnobs] = useState<Knobs>(startKnobs);
  const [display, setDisplay] = useState('');
  const { world } = session;
  const reachable = terminals.filter((terminal) => inReach(world.state, terminal));
  const on = (lead: Lead) => reachable.find(({ node }) => node === placed[lead]);
  const [red, black] = [on('red'), on('black')];

  const place = (node: string) => {
    setPlaced((before) => ({ ...before, [next]: node }));
    setNext(next === 'red' ? 'black' : 'red');
    setDisplay('');
  };
  const turn = (changed: Knobs) => {
    setKnobs(changed);
    setDisplay('');
  };
  const measure = () => {
    if (red === undefined || black === undefined) return;
    onAct({ act: 'measure', mode: knobs.mode, red: red.node, black: black.node, setting: settingOf(knobs) });
    const result = lastIn(session.entries)?.result;
    const shown: Measurement | undefined = result?.code === 'reading' ? result.shown : undefined;
    setDisplay(shown?.text ?? '');
  };
  return (
    <section class="practice-bench" aria-labelledby="bench">
      <h2 id="bench" tabIndex={-1}>
        Measure
      </h2>
      <LeadChoice next={next} placed={{ red: red?.node, black: black?.node }} onChoose={setNext} />
      <svg class="practice-drawing" viewBox={`0 0 ${drawingSize.width} ${drawingSize.height}`}>
        <title>{drawingTexts.title}</title>
        <AxisDrawing world={world} />
        <InstrumentDrawing mode={knobs.mode} display={display} />
        {reachable.map((terminal) => (
          <TerminalButton key={terminal.node} terminal={terminal} placed={placed} next={next} onPlace={place} />
        ))}
        <LeadWires red={red} black={black} />
      </svg>
      <MeterControls
        knobs={knobs}
        instruments={world.instruments}
        onTurn={turn}
        onMeasure={measure}
        ready={red !== undefined && black !== undefined}
      />
    </section>
  );
}
