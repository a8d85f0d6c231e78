import { formatQuantity } from '../../kernel/reading/format-reading.ts';
import type { Instruments } from '../simulator/instruments.ts';
import { modeTexts } from '../words/acts.ts';
import { benchTexts } from '../words/bench.ts';
import { type Knobs, modes, testVoltages } from './knobs.ts';

interface Props {
  knobs: Knobs;
  instruments: Instruments;
  onTurn: (knobs: Knobs) => void;
  onMeasure: () => void;
  ready: boolean;
}

/** The instrument, its range and its test voltage; and the button that measures. */
export function MeterControls({ knobs, instruments, onTurn, onMeasure, ready }: Props) {
  const { mode } = knobs;
  return (
    <>
      <fieldset>
        <legend>{benchTexts.instrument}</legend>
        <div class="choices">
          {modes.map((one) => (
            <label key={one}>
              <input
                type="radio"
                name="meter-mode"
                value={one}
                checked={mode === one}
                onChange={() => onTurn({ ...knobs, mode: one })}
              />
              <span>{modeTexts[one]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {(mode === 'volts' || mode === 'ohms') && (
        <RangeSelect knobs={knobs} full={instruments[mode].ranges.map(({ fullScale }) => fullScale)} onTurn={onTurn} />
      )}
      {mode === 'ohms' && (
        <Tick label={benchTexts.zeroed} on={knobs.zeroed} onTurn={(zeroed) => onTurn({ ...knobs, zeroed })} />
      )}
      {mode === 'insulation' && (
        <>
          <div class="field">
            <label for="test-volts">{benchTexts.testVoltage}</label>
            <select
              id="test-volts"
              value={String(knobs.testVolts)}
              onChange={(event) => onTurn({ ...knobs, testVolts: Number(event.currentTarget.value) })}
            >
              {testVoltages.map((volts) => (
                <option key={volts} value={String(volts)}>
                  {volts} V
                </option>
              ))}
            </select>
          </div>
          <Tick
            label={benchTexts.discharge}
            on={knobs.discharge}
            onTurn={(discharge) => onTurn({ ...knobs, discharge })}
          />
        </>
      )}
      <button type="button" class="primary measure" aria-disabled={!ready} onClick={onMeasure}>
        {mode === 'insulation' ? benchTexts.test : benchTexts.measure}
      </button>
      {!ready && <p class="hint">{benchTexts.placeBoth}</p>}
    </>
  );
}

function RangeSelect({ knobs, full, onTurn }: { knobs: Knobs; full: number[]; onTurn: (knobs: Knobs) => void }) {
  const { mode, ranges } = knobs;
  const unit = mode === 'volts' ? 'V' : 'Ω';
  return (
    <div class="field">
      <label for="meter-range">{benchTexts.range}</label>
      <select
        id="meter-range"
        value={String(ranges[mode] ?? '')}
        onChange={(event) => {
          const { [mode]: _, ...others } = ranges;
          const chosen = event.currentTarget.value;
          onTurn({ ...knobs, ranges: chosen === '' ? others : { ...others, [mode]: Number(chosen) } });
        }}
      >
        <option value="">{benchTexts.automatic}</option>
        {full.map((range) => (
          <option key={range} value={String(range)}>
            {formatQuantity(range, unit)}
          </option>
        ))}
      </select>
    </div>
  );
}

function Tick({ label, on, onTurn }: { label: string; on: boolean; onTurn: (on: boolean) => void }) {
  return (
    <div class="choices tick">
      <label>
        <input type="checkbox" checked={on} onChange={(event) => onTurn(event.currentTarget.checked)} />
        <span>{label}</span>
      </label>
    </div>
  );
}
