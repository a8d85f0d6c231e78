/** Motor terminals after IEC 60034-8. */
export type Phase = 'U' | 'V' | 'W';

export const phases: readonly Phase[] = ['U', 'V', 'W'];

export type Phases<T> = Record<Phase, T>;

export function mapPhases<A, B>(from: Phases<A>, map: (value: A, phase: Phase) => B): Phases<B> {
  return { U: map(from.U, 'U'), V: map(from.V, 'V'), W: map(from.W, 'W') };
}
