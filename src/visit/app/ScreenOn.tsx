import { useState } from 'preact/hooks';
import { screenTexts } from '../words/visit.ts';
import { TickInput } from './TickInput.tsx';
import { useWakeLock } from './use-wake-lock.ts';

const key = 'fieldbook-screen-may-sleep';

/** Keeps the screen on while a visit is open, unless the person does not want that, and says whether the device does it. */
export function ScreenOn() {
  const [wanted, setWanted] = useState(readWanted);
  const state = useWakeLock(wanted);
  const choose = (value: string) => {
    setWanted(value === 'yes');
    try {
      if (value === 'yes') localStorage.removeItem(key);
      else localStorage.setItem(key, 'yes');
    } catch {
      // Without storage it holds for this window.
    }
  };
  return (
    <div class="screen-on">
      <TickInput id="screen-on" label={screenTexts.label} value={wanted ? 'yes' : ''} onChoose={choose} />
      <p class="hint" role="status">
        {wanted && (state === 'refused' || state === 'unsupported') && screenTexts[state]}
      </p>
    </div>
  );
}

function readWanted(): boolean {
  try {
    return localStorage.getItem(key) === null;
  } catch {
    return true;
  }
}
