import { formatQuantity } from '../../kernel/reading/format-reading.ts';
import type { Instruments } from '../simulator/instruments.ts';
import { modeTexts } from '../words/acts.ts';
import { benchTexts } from '../words/bench.ts';
import { type MeterSettings, modes, testVoltages } from './meter-settings.ts';

interface Props {
  settings: MeterSettings;
  instruments: Instruments;
  onChange: (settings: MeterSettings) => void;
  onMeasure: () => void;
  ready: boolean;
}

/** Choice of instrument, range and test voltage, and the button that measures. */
export function MeterControls({ settings, instruments, onChange, onMeasure, ready }: Props) {
  const { mode } = settings;
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
                onChange={() => onChange({ ...settings, mode: one })}
              />
              <span>{modeTexts[one]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {(mode === 'volts' || mode === 'ohms') && (
        <RangeSelect
          settings={settings}
          full={instruments[mode].ranges.map(({ fullScale }) => fullScale)}
          onChange={onChange}
        />
      )}
      {mode === 'ohms' && (
        <Tick label={benchTexts.zeroed} on={settings.zeroed} onChange={(zeroed) => onChange({ ...settings, zeroed })} />
      )}
      {mode === 'insulation' && (
        <>
          <div class="field">
            <label for="test-volts">{benchTexts.testVoltage}</label>
            <select
              id="test-volts"
              value={String(settings.testVolts)}
              onChange={(event) => onChange({ ...settings, testVolts: Number(event.currentTarget.value) })}
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
            on={settings.discharge}
            onChange={(discharge) => onChange({ ...settings, discharge })}
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

function RangeSelect({
  settings,
  full,
  onChange,
}: {
  settings: MeterSettings;
  full: number[];
  onChange: (settings: MeterSettings) => void;
}) {
  const { mode, ranges } = settings;
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
          onChange({ ...settings, ranges: chosen === '' ? others : { ...others, [mode]: Number(chosen) } });
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

function Tick({ label, on, onChange }: { label: string; on: boolean; onChange: (on: boolean) => void }) {
  return (
    <div class="choices tick">
      <label>
        <input type="checkbox" checked={on} onChange={(event) => onChange(event.currentTarget.checked)} />
        <span>{label}</span>
      </label>
    </div>
  );
}
