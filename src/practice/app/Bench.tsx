import { useState } from 'preact/hooks';
import { lastIn } from '../../kernel/reading/last-in.ts';
import type { Action } from '../case/action.ts';
import type { CaseRun } from '../case/case-run.ts';
import { inReach, terminals } from '../case/terminals.ts';
import type { Measurement } from '../simulator/measure.ts';
import { drawingTexts } from '../words/bench.ts';
import { AxisDrawing } from './AxisDrawing.tsx';
import { drawingSize } from './drawing-layout.ts';
import { InstrumentDrawing } from './InstrumentDrawing.tsx';
import { LeadChoice } from './LeadChoice.tsx';
import { LeadWires } from './LeadWires.tsx';
import { MeterControls } from './MeterControls.tsx';
import { initialMeterSettings, type Lead, type MeterSettings, type Placed, settingOf } from './meter-settings.ts';
import { TerminalButton } from './TerminalButton.tsx';

interface Props {
  run: CaseRun;
  onAct: (action: Action) => void;
}

/** The drawing of the axis, and the instrument with its leads. */
export function Bench({ run, onAct }: Props) {
  const [next, setNext] = useState<Lead>('red');
  const [placed, setPlaced] = useState<Placed>({});
  const [settings, setSettings] = useState<MeterSettings>(initialMeterSettings);
  const [display, setDisplay] = useState('');
  const { machine } = run;
  const reachable = terminals.filter((terminal) => inReach(machine.state, terminal));
  const on = (lead: Lead) => reachable.find(({ node }) => node === placed[lead]);
  const [red, black] = [on('red'), on('black')];

  const place = (node: string) => {
    setPlaced((before) => ({ ...before, [next]: node }));
    setNext(next === 'red' ? 'black' : 'red');
    setDisplay('');
  };
  const turn = (changed: MeterSettings) => {
    setSettings(changed);
    setDisplay('');
  };
  const measure = () => {
    if (red === undefined || black === undefined) return;
    onAct({ act: 'measure', mode: settings.mode, red: red.node, black: black.node, setting: settingOf(settings) });
    const result = lastIn(run.entries)?.result;
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
        <AxisDrawing machine={machine} />
        <InstrumentDrawing mode={settings.mode} display={display} />
        {reachable.map((terminal) => (
          <TerminalButton key={terminal.node} terminal={terminal} placed={placed} next={next} onPlace={place} />
        ))}
        <LeadWires red={red} black={black} />
      </svg>
      <MeterControls
        settings={settings}
        instruments={machine.instruments}
        onChange={turn}
        onMeasure={measure}
        ready={red !== undefined && black !== undefined}
      />
    </section>
  );
}
