import { useEffect, useRef, useState } from 'preact/hooks';
import type { Problem } from '../../kernel/link/problem.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { type Axis, type Register, registerOf } from '../history/register.ts';
import type { AxisRecord } from '../record/axis-schema.ts';
import { recordOf } from '../record/change-axis.ts';
import type { AxisStore } from '../storage/axis-store.ts';

export interface OpenRegister {
  /** Undefined until it is read. */
  register: Register | undefined;
  /** Records of another edition of the site. */
  unreadable: number;
  problem: Problem | undefined;
  /** Changes the record of an axis, and makes one if there is none. Resolves when it is stored or has failed. */
  change: (axis: Axis, next: (record: AxisRecord, now: string) => AxisRecord) => Promise<void>;
}

/** The register of this device, read again when another tab has changed it. */
export function useRegister(store: AxisStore): OpenRegister {
  const [register, setRegister] = useState<Register>();
  const [unreadable, setUnreadable] = useState(0);
  const [problem, setProblem] = useState<Problem>();
  const records = useRef<readonly AxisRecord[]>([]);

  const show = async () => {
    const stored = await store.load();
    if (!stored.ok) return setProblem(stored.problem);
    setProblem(undefined);
    records.current = stored.value.records;
    setUnreadable(stored.value.unreadable.length);
    setRegister(registerOf(stored.value.records, stored.value.heads));
  };

  useEffect(() => {
    void show();
    // While this page was in the browser's cache, another page may have saved a visit.
    const again = ({ persisted }: PageTransitionEvent) => {
      if (persisted) void show();
    };
    addEventListener('pageshow', again);
    const stop = store.listen(() => void show());
    return () => {
      removeEventListener('pageshow', again);
      stop();
    };
  }, []);

  return {
    register,
    unreadable,
    problem,
    async change(axis, next) {
      const now = isoTime(new Date());
      const result = await store.save(next(recordOf(records.current, axis, now), now));
      if (!result.ok) return setProblem(result.problem);
      await show();
    },
  };
}
