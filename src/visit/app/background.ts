import { createContext } from 'preact';
import { useContext, useEffect, useState } from 'preact/hooks';
import type { EvaluatedVisit } from '../evaluate.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { MeasuredStepId } from '../steps/questions.ts';

/** A reading of this visit against earlier ones. Information: no verdict uses it. */
export interface AgainstEarlier {
  step: MeasuredStepId;
  /** A few words beside the word of the verdict. */
  short: string;
  text: string;
}

/** What is known about the axis of a visit from other visits. */
export interface Background {
  /** The page of the axis. */
  axis: { href: string; title: string };
  /** The last readings, by field, with their dates: shown beside the field, never filled in. */
  beside: (step: MeasuredStepId) => Record<string, string>;
  /** What the readings of the visit say when they are compared with earlier ones, as far as it is worth saying. */
  against: (evaluated: EvaluatedVisit) => AgainstEarlier[];
  /** A question that the history asks, with the article that answers it. */
  asks?: { text: string; href: string; link: string };
}

type Load = (visit: VisitRecord) => Promise<Background | undefined>;

let load: Load | undefined;

/** Called by the page before it shows a visit: the register is above the visit and is not imported here. */
export function provideBackground(from: Load): void {
  load = from;
}

/** Machine and axis, as the register names them. */
type KnownNames = Pick<VisitRecord, 'machine' | 'axis'>;

let loadNames: (() => Promise<KnownNames[]>) | undefined;

/** Called by the page, as `provideBackground` is. */
export function provideKnownAxes(from: () => Promise<KnownNames[]>): void {
  loadNames = from;
}

/** The axes of the register, the last visited first; none until they are read. */
export function useKnownAxes(): KnownNames[] {
  const [known, setKnown] = useState<KnownNames[]>([]);
  useEffect(() => {
    void loadNames?.().then(setKnown);
  }, []);
  return known;
}

/** The background of the open visit; without one everything works as it does on a first visit. */
export const BackgroundContext = createContext<Background | undefined>(undefined);

export const useBackground = () => useContext(BackgroundContext);

/** Loads the background when the visit is opened and when it is named otherwise. */
export function useLoadedBackground(visit: VisitRecord | undefined): Background | undefined {
  const [known, setKnown] = useState<Background>();
  const { id, axisId, machine, axis, motor } = visit ?? {};
  useEffect(() => {
    let current = true;
    if (visit !== undefined) {
      void load?.(visit).then((background) => {
        if (current) setKnown(background);
      });
    }
    return () => {
      current = false;
    };
  }, [id, axisId, machine, axis, motor]);
  return known;
}
