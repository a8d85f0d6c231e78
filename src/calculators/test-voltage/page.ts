import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Finds the test voltage for an insulation test in the published tables, says what must be off the conductors first, and judges what is set on the tester. Go means: as stated, the test may be made with this voltage.',
  hazards: ['lethal-voltage', 'stored-energy', 'test-voltage', 'hanging-axis'],
  conditions: 'supply locked out, bus dead, both ends of every conductor known and guarded, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'You know both ends of every conductor under test, and nobody can touch them during the test.',
    'A hanging axis is supported or pinned: a brake that is unplugged or tested does not hold.',
  ],
  otherWords: [
    'insulation test voltage',
    'megohm test voltage',
    '250 V',
    '500 V',
    '1000 V',
    'hipot',
    'varistor',
    'MOV',
    'surge suppressor',
    'SPD',
    'brake coil test',
    'encoder test voltage',
  ],
  related: ['measuring/choosing-the-limit', 'measuring/choosing-the-limit', 'measuring/insulation-testing'],
};
