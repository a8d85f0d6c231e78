import type { BridgeAssessment } from '../../../calculators/bridge/rule/assess.ts';
import type { InputAssessment } from '../../../calculators/input-circuit/rule/input.ts';
import type { InsulationAssessment } from '../../../calculators/insulation/rule/input.ts';
import type { IsolationAssessment } from '../../../calculators/isolation/rule/input.ts';
import type { WindingAssessment } from '../../../calculators/winding/rule/assess.ts';
import type { BendTestAnswer } from '../bend-test/answer.ts';
import type { Form } from '../fields.ts';
import type { StepWords } from '../question.ts';

/** `leftOpen`: the person can't get a decision here and goes on; the decision lists it as open. */
export interface MeasurementAnswer<A> {
  assessment: A;
  leftOpen: boolean;
  /** The winding temperature that was entered, in °C; absent if none was. */
  celsius?: number;
}

export interface MeasuredAnswers {
  bridge: MeasurementAnswer<BridgeAssessment>;
  'input-circuit': MeasurementAnswer<InputAssessment>;
  insulation: MeasurementAnswer<InsulationAssessment>;
  isolation: MeasurementAnswer<IsolationAssessment>;
  'bend-test': BendTestAnswer;
  winding: MeasurementAnswer<WindingAssessment>;
  'winding-motor': MeasurementAnswer<WindingAssessment>;
}

/** A step whose form is a calculator with `leftOpen` added. Which calculator: steps/calculators.ts. */
export interface MeasuredQuestion extends StepWords {
  /** Possible instruments, named as in the visit's list of instruments; the first one noted there is used. */
  instruments: readonly string[];
  /** Fields of the calculator that a visit fixes. */
  given: Form;
}

export const bridge: MeasuredQuestion = {
  title: 'Six readings at the output stage',
  instructions: ['Take the six readings with a multimeter and type them in.'],
  why: 'It finds shorted, leaky and open switches.',
  when: 'Always, with the motor leads off.',
  instruments: ['Multimeter'],
  given: {},
};

export const inputCircuit: MeasuredQuestion = {
  title: 'Input and DC bus of the drive',
  instructions: [
    'Take the supply leads off the drive, mark and cap them. Take braking resistor and links to neighbours off, as the manual allows.',
    'Take each fuse out of its holder, and measure fuses, rectifier, DC+ to DC− and precharge as the calculator asks.',
    'Read what fails a second time, with the tips lifted in between.',
    'The supply leads go back on as marked, and the fuses in, after a short was found and mended: last of all.',
  ],
  why: 'Fuses and breaker open on a short of the input, of the bus or before the drive. A second try into a short can burst the drive.',
  when: 'If fuses or the breaker of the supply opened.',
  caution: 'The meter charges the bus. Nobody touches its terminals after the diode test.',
  instruments: ['Multimeter'],
  given: {},
};

export const insulation: MeasuredQuestion = {
  title: 'Insulation of motor and cable',
  instructions: [
    'U, V and W are off the drive. Now take the PE core off it too, as the last lead: left on, PE shows continuity even when it is broken.',
    'Test at the drive end, cable and motor joined. The free leads carry the test voltage too: keep their ends apart.',
    'Take encoder, temperature sensor and brake off the test, with the load on its support before the brake connector opens.',
    'In a motor with one cable for power and feedback, free the feedback pair as its manual says. If the manual says nothing, use no insulation tester.',
    'Discharge the winding after each test, as long as the calculator says, before anyone touches it.',
  ],
  why: 'A motor or cable with bad insulation destroys the next drive.',
  when: 'Always, whatever the drive is: a bad drive may have been killed by its motor.',
  caution: 'The tester’s voltage is dangerous too. Nobody touches the leads or the other end.',
  instruments: ['Insulation tester'],
  // A visit begins with a trip: the strict limit applies even if the record was edited to another occasion.
  given: { occasion: 'after-trip' },
};

export const isolation: MeasuredQuestion = {
  title: 'Cable or motor',
  instructions: [
    'Motor leads and PE core off the drive, if they are on again. Discharge before each change of leads.',
    'For the cable alone, lift its screen too. For the motor alone, the earth lead goes on bare metal of its shell.',
    'Test the cable alone, then the motor alone, as the calculator asks.',
  ],
  why: 'The joined reading does not tell which is bad, and often both are.',
  when: 'If the insulation does not pass, if the symptom or what you saw points at the cable, or if it still trips though everything passed.',
  instruments: ['Insulation tester'],
  given: {},
};

export const winding: MeasuredQuestion = {
  title: 'Winding resistance',
  instructions: [
    'Discharge first. Plug the motor in again if it is off its cable; the leads stay off the drive.',
    'Measure U–V, V–W and W–U at the drive end, through the cable, leads zeroed.',
  ],
  why: 'A short between phases or an open winding does not show in the insulation to PE.',
  when: 'Unless the motor is proven bad already.',
  instruments: ['Milliohm meter', 'Multimeter'],
  given: {},
};

export const windingMotor: MeasuredQuestion = {
  title: 'Winding resistance at the motor',
  instructions: ['Discharge first.', 'Measure U–V, V–W and W–U at the motor connector, without the cable.'],
  why: 'Bad here as well: the motor. Good here: the cable.',
  when: 'If the readings through the cable fail, or the cable is bad.',
  instruments: ['Milliohm meter', 'Multimeter'],
  given: {},
};

export const measuredProblems = {
  'part-open':
    'One of the two parts is not known yet. Take the measurement that the verdict asks for next, or say that you leave it open.',
  undecided: 'No decision yet. Take the measurement that the verdict asks for, or say that you leave it open.',
};
