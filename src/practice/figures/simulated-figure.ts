import type { ComponentType } from 'preact';

/** Something that the reader sets: one of a few stops. */
export interface Control {
  /** Unique within the figure. */
  id: string;
  label: string;
  /** What each stop is called, with its unit. */
  stops: readonly string[];
  /** The stop that the figure shows without script, and first. */
  start: number;
  /** A few stops side by side, or many on a slider. */
  as: 'choice' | 'slider';
}

/** The stop of each control, in the order of the controls. */
export type Settings = readonly number[];

/**
 * A figure that computes what it shows with the simulator. `compute` is pure; everything else is made from its result,
 * so that drawing, words and table can't differ.
 */
export interface SimulatedFigure<Result> {
  /** Unique on a page. */
  id: string;
  /** What is drawn, in a few words. */
  title: string;
  /** What to change, and what to look at. */
  caption: string;
  /** What is computed, and from what. The view adds that it is a model. */
  model: string;
  controls: readonly Control[];
  compute(settings: Settings): Result;
  /** The figures of the result, each with its name, as an instrument or a person would write them. */
  values(result: Result): readonly Value[];
  /** What the values mean, in one or two sentences. */
  says(result: Result): string;
  /** What stands between the tags of the SVG, which is 360 units wide. */
  Drawing: ComponentType<{ result: Result }>;
  height: number;
  /** Settings of the rows of the table, for paper and for readers without script. */
  rows: readonly Settings[];
}

export type Value = readonly [name: string, text: string];

/** Settings as they are before anybody touches the figure. */
export function startOf({ controls }: Pick<SimulatedFigure<unknown>, 'controls'>): Settings {
  return controls.map(({ start }) => start);
}

/** Settings with the control at `place` moved to `stop`. */
export function withStop(settings: Settings, place: number, stop: number): Settings {
  return settings.map((now, at) => (at === place ? stop : now));
}
