import type { Domain } from './domain.ts';
import { linear, logarithmic, type Scale } from './scale.ts';
import { linearTicks, logTicks } from './ticks.ts';

export interface Axis {
  /** `log10`: equal ratios are equal lengths, and the domain is above zero. */
  kind: 'linear' | 'log10';
  domain: Domain;
  /** Quantity and unit, such as `winding temperature, °C`. */
  label: string;
  /** The text of a tick. */
  format: (value: number) => string;
  /** Places of the ticks, if the usual round ones do not suit. */
  ticks?: number[];
}

export interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

interface PlacedAxis {
  place: Scale;
  ticks: { at: number; text: string }[];
  label: string;
}

/** The layout of a plot, shared by all its parts. */
export interface Frame {
  x: PlacedAxis;
  y: PlacedAxis;
  box: Box;
}

/** One unit is about one pixel on a phone of 360 px: 78 units hold `100 GΩ` beside the axis. */
const usualBox: Box = { left: 78, right: 344, top: 32, bottom: 300 };

/** Lays out a plot of 360 units' width; `box` is the area between the axes. */
export function plotFrame(x: Axis, y: Axis, box: Partial<Box> = {}): Frame {
  const whole = { ...usualBox, ...box };
  return {
    x: placed(x, [whole.left, whole.right]),
    y: placed(y, [whole.bottom, whole.top]),
    box: whole,
  };
}

function placed({ kind, domain, label, format, ticks }: Axis, range: Domain): PlacedAxis {
  const place = kind === 'linear' ? linear(domain, range) : logarithmic(domain, range);
  const places = ticks ?? (kind === 'linear' ? linearTicks(...domain, 5) : logTicks(...domain));
  return { place, label, ticks: places.map((value) => ({ at: place(value), text: format(value) })) };
}
