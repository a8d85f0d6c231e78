import type { StepId } from '../../visit/steps/ids.ts';
import type { VoidPurpose } from '../case/purpose.ts';
import type { Unsafe } from '../case/unsafe-acts.ts';

/* Ids of articles to read, the closest first; some may not exist on this site. */

const safe = 'safety/safe-measurement';
const insulation = 'measuring/insulation-testing';
const causes = 'trip/when-it-trips';

const stored = ['safety/lockout-and-stored-energy', safe];
const bus = ['safety/the-dc-bus', safe];
const dead = ['safety/proving-dead', safe];
const hanging = ['safety/gravity-loaded-axes', safe];
const power = ['deciding/before-power-goes-on-again', safe];
const hookUps = ['measuring/choosing-the-limit', insulation];

export const unsafeArticles: Record<Unsafe, readonly string[]> = {
  'hands-with-power': stored,
  'hands-without-lockout': stored,
  'hands-on-charged-bus': bus,
  'bus-not-measured': bus,
  'meter-not-proved': dead,
  'measured-live': ['safety/looking-while-energised', safe],
  'touched-without-support': hanging,
  'winding-not-discharged': hookUps,
  'resistance-on-live': ['safety/instruments-and-leads', safe],
  'tester-on-drive': hookUps,
  'test-voltage-too-high': [insulation],
  'damaged-drive-powered': ['trip/output-stage-failure', causes],
  'enabled-without-support': hanging,
  'axis-fell': hanging,
  'powered-after-failure': power,
  'powered-without-pe': power,
  'enabled-without-feedback': ['trip/feedback-faults', causes],
  'powered-with-bonds': power,
  'live-open-end': power,
  'bus-on-low-voltage-circuit': power,
  'tried-again-untested': ['trip/find-the-drive-and-axis', causes],
};

export const voidArticles: Record<VoidPurpose | 'again', readonly string[]> = {
  'through-the-drive': ['measuring/bridge-check', safe],
  'pe-still-on': hookUps,
  'multimeter-as-tester': ['safety/instruments-and-leads', insulation],
  'tells-nothing': hookUps,
  again: ['measuring/choosing-the-limit'],
};

export const stepArticles: Partial<Record<StepId, readonly string[]>> = {
  bridge: ['measuring/bridge-check', causes],
  insulation: [insulation],
  isolation: ['measuring/cable-or-motor', insulation],
  winding: ['measuring/winding-resistance', causes],
  'winding-motor': ['measuring/winding-resistance', causes],
};
