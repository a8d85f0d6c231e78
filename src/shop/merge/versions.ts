/** How many changes of each device are in a version of a record, by the id of the device. */
export type Versions = Readonly<Record<string, number>>;

/** How one version stands to another; `apart`: each has a change that the other has not. */
export type Order = 'same' | 'before' | 'after' | 'apart';

const of = (versions: Versions, device: string) => new Map(Object.entries(versions)).get(device) ?? 0;

export function compareVersions(a: Versions, b: Versions): Order {
  const devices = [...Object.keys(a), ...Object.keys(b)];
  const more = devices.some((device) => of(a, device) > of(b, device));
  const less = devices.some((device) => of(a, device) < of(b, device));
  if (more) return less ? 'apart' : 'after';
  return less ? 'before' : 'same';
}

/** A version that has the changes of both. */
export function joined(a: Versions, b: Versions): Versions {
  const devices = [...new Set([...Object.keys(a), ...Object.keys(b)])].sort();
  return Object.fromEntries(devices.map((device) => [device, Math.max(of(a, device), of(b, device))]));
}

/** The version after one more change on this device. */
export function changedOn(device: string, versions: Versions): Versions {
  return { ...versions, [device]: of(versions, device) + 1 };
}
