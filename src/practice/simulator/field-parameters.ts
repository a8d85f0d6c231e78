import { type Phases, phases } from '../../kernel/electrics/phases.ts';
import { between, betweenDecades, chance, oneOf, type Random } from '../../kernel/random.ts';
import { type IdleCore, idleCores } from './axis-state.ts';
import { field, fieldShares, type PropertyShares } from './field-figures.ts';
import { type AxisParameters, drawAxis } from './parameters.ts';
import { typical } from './typical.ts';

/**
 * A sound axis as the field has them: drives with other sense networks, buses and neighbours; cables with all their
 * cores, long or of PVC; motors that are old or damp. `shares`: how common each property is.
 */
export function drawFieldAxis(random: Random, shares: PropertyShares = fieldShares): AxisParameters {
  const tidy = drawAxis(random);
  const brake = tidy.gravityLoaded || chance(random, shares.brakeWithoutGravity);
  return {
    ...tidy,
    ...fieldDrive(random, shares),
    ...fieldCable(random, shares, tidy, brake),
    ...fieldMotor(random, shares, tidy),
  };
}

type DriveParameters = Pick<
  AxisParameters,
  'busFarads' | 'bleedOhms' | 'upperOhms' | 'lowerOhms' | 'balance' | 'link' | 'brakingOhms' | 'neighbour'
>;

/** The bus falls with a time constant that the drive's label allows; sense resistors carry part of it, or nothing. */
function fieldDrive(random: Random, shares: PropertyShares): DriveParameters {
  const busFarads = betweenDecades(random, ...field.busFarads);
  const discharge = between(random, ...field.dischargeSeconds) / busFarads;
  const sense = chance(random, shares.senseOpen) ? 'open' : chance(random, shares.senseAlike) ? 'alike' : 'one-sided';
  const legOhms = sense === 'open' ? field.openOhms : 3 * discharge * between(random, ...field.senseToDischarge);
  const lower = between(random, ...typical.lowerShare);
  const lowerShare = sense === 'one-sided' ? lower : 0.5;
  const leg = (share: number): Phases<number> =>
    Object.fromEntries(
      phases.map((phase) => [
        phase,
        legOhms * share * between(random, 1 - typical.resistorTolerance, 1 + typical.resistorTolerance),
      ]),
    ) as Phases<number>;
  const [upperOhms, lowerOhms] = [leg(1 - lowerShare), leg(lowerShare)];
  if (chance(random, shares.senseUnlike)) {
    const phase = oneOf(random, phases);
    const rail = chance(random, 0.5) ? upperOhms : lowerOhms;
    rail[phase] = parallel(rail[phase], betweenDecades(random, ...field.ownResistorOhms));
  }
  const bleedOhms = 1 / (1 / discharge - 3 / legOhms);
  return {
    busFarads,
    bleedOhms,
    upperOhms,
    lowerOhms,
    ...seriesCapacitors(random, shares, bleedOhms),
    ...(chance(random, shares.link) && { link: linked(random, busFarads, discharge) }),
    ...(chance(random, shares.brakingResistor) && { brakingOhms: betweenDecades(random, ...field.brakingOhms) }),
    ...(chance(random, shares.neighbour) && { neighbour: otherAxis(random) }),
  };
}

const parallel = (one: number, other: number): number => 1 / (1 / one + 1 / other);

function seriesCapacitors(random: Random, shares: PropertyShares, bleedOhms: number): Pick<AxisParameters, 'balance'> {
  if (!chance(random, shares.seriesCapacitors)) return {};
  const half = () => (bleedOhms / 2) * between(random, 1 - typical.resistorTolerance, 1 + typical.resistorTolerance);
  const balance = { upperOhms: half(), lowerOhms: half() };
  if (!chance(random, shares.balanceOpen)) return { balance };
  return { balance: { ...balance, [oneOf(random, ['upperOhms', 'lowerOhms'] as const)]: field.openOhms } };
}

function linked(random: Random, busFarads: number, bleedOhms: number): NonNullable<AxisParameters['link']> {
  const drives = between(random, ...field.linkedDrives);
  return { farads: busFarads * drives, bleedOhms: bleedOhms / drives };
}

type CableParameters = Pick<
  AxisParameters,
  | 'cableMetres'
  | 'insulationOhmMetres'
  | 'cableKelvinPerHalving'
  | 'peOhmsPerMetre'
  | 'idleCores'
  | 'oneCable'
  | 'filterOhms'
>;

function fieldCable(random: Random, shares: PropertyShares, tidy: AxisParameters, brake: boolean): CableParameters {
  const long = chance(random, shares.longCable);
  const pvc = chance(random, shares.pvcCable);
  const oneCable = chance(random, shares.oneCable);
  // With one cable for all, the sensor reports through the feedback.
  const sensor = !oneCable && chance(random, shares.sensorInCable);
  const has = (core: IdleCore): boolean => (core.startsWith('brake') ? brake : sensor);
  return {
    cableMetres: long ? Math.round(between(random, ...field.longMetres)) : tidy.cableMetres,
    insulationOhmMetres: pvc ? betweenDecades(random, ...field.pvcOhmMetres) : tidy.insulationOhmMetres,
    cableKelvinPerHalving: pvc ? field.pvcKelvinPerHalving : field.plasticKelvinPerHalving,
    peOhmsPerMetre: long && chance(random, shares.thinPe) ? field.thinPeOhmsPerMetre : tidy.coreOhmsPerMetre,
    idleCores: idleCores.filter(has),
    oneCable,
    ...(chance(random, shares.filter) && { filterOhms: betweenDecades(random, ...field.filterOhms) }),
  };
}

function fieldMotor(
  random: Random,
  shares: PropertyShares,
  tidy: AxisParameters,
): Pick<AxisParameters, 'frameInsulationOhms' | 'coolingSeconds'> {
  const old = chance(random, shares.oldMotor);
  const frame = betweenDecades(random, ...field.oldFrameOhms);
  const coolingSeconds = between(random, ...field.coolingSeconds);
  if (!old) return { frameInsulationOhms: tidy.frameInsulationOhms, coolingSeconds };
  const { frameTolerance } = typical;
  return {
    coolingSeconds,
    frameInsulationOhms: Object.fromEntries(
      phases.map((phase) => [phase, frame * between(random, 1 - frameTolerance, 1 + frameTolerance)]),
    ) as Phases<number>,
  };
}

/** The same axis with the equipment that these nodes belong to: idle cores, braking resistor, other axis of the drive. */
export function equippedFor(parameters: AxisParameters, nodes: readonly string[], random: Random): AxisParameters {
  const named = (text: string) => nodes.some((node) => node.includes(text));
  const needed = (core: IdleCore) => named(core.slice(0, -1).concat('+')) || named(core.slice(0, -1).concat('-'));
  return {
    ...parameters,
    idleCores: idleCores.filter((core) => parameters.idleCores.includes(core) || needed(core)),
    ...(named('braking.') && { brakingOhms: parameters.brakingOhms ?? betweenDecades(random, ...field.brakingOhms) }),
    ...(named('neighbour.') && { neighbour: parameters.neighbour ?? otherAxis(random) }),
  };
}

function otherAxis(random: Random): NonNullable<AxisParameters['neighbour']> {
  return {
    windingOhms: oneOf(random, typical.motors).windingOhms,
    frameInsulationOhms: betweenDecades(random, ...typical.frameInsulationOhms),
    gravityLoaded: chance(random, field.neighbourFalls),
  };
}
