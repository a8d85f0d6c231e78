import { missing } from '../../kernel/reading/reading.ts';
import { busReadingFor } from '../../visit/guide/dead-proofs.ts';
import type { Decision } from '../../visit/guide/decision.ts';
import { pointsAtCableOrMotor } from '../../visit/guide/evidence.ts';
import { nextStep } from '../../visit/guide/next-step.ts';
import type { StepId } from '../../visit/steps/ids.ts';
import type { Answers, MeasuredStepId, VisitAnswers } from '../../visit/steps/questions.ts';
import type { Machine } from '../case/machine.ts';
import { measureBridge } from './measure-bridge.ts';
import { measureInput } from './measure-input.ts';
import { measureInsulation, measureIsolation } from './measure-insulation.ts';
import { measureWinding } from './measure-winding.ts';
import type { Measuring } from './measuring.ts';
import { plainAnswers, type ToldStepId } from './plain-answers.ts';

/** Does what a step asks, or leaves it, and says what the record gets: a person may err, or know more than the robot. */
export type Teller = <Id extends ToldStepId>(id: Id, act: () => Answers[Id]) => Answers[Id];

/** Steps whose readings the robot takes and assesses by itself. */
type ReadStepId = Exclude<MeasuredStepId, ToldStepId>;

export interface PlayedVisit {
  decision: Decision;
  answers: VisitAnswers;
  /** Number of answers given, corrections included. */
  steps: number;
}

/** No way through the guide is longer; more means that the robot and the guide go round in a circle. */
const maxSteps = 120;

/** A technician who does exactly what the guide asks, until it decides. */
export class Robot {
  private answers: VisitAnswers = {};
  private seq = 0;
  private readonly machine: Machine;
  private readonly tell: Teller;

  constructor(machine: Machine, tell: Teller = (_, act) => act()) {
    this.machine = machine;
    this.tell = tell;
  }

  visit(): PlayedVisit {
    for (;;) {
      const { due, decision } = nextStep(this.answers);
      if (decision !== undefined) return { decision, answers: this.answers, steps: this.seq };
      if (due === undefined || this.seq > maxSteps) throw new Error(`no end: ${due}`);
      if (isMeasured(due)) this.measure(due);
      else
        this.give(
          due,
          this.tell(due, () => plainAnswers[due](this.machine)),
        );
    }
  }

  /** Assesses, and does what the verdict asks for, as long as it is no go and something can be done. */
  private measure(id: ReadStepId): void {
    const measuring = this.begin(id);
    for (;;) {
      const assessment = measuring.assess();
      const celsius = Math.round(this.machine.shownCelsius);
      this.give(id, { assessment, leftOpen: false, celsius } as Answers[ReadStepId]);
      const stuck = nextStep(this.answers).due === id;
      const more = stuck || assessment.verdict !== 'go';
      if (more && measuring.improve(assessment.next.map(({ code }) => code))) continue;
      if (stuck) this.give(id, { assessment, leftOpen: true, celsius } as Answers[ReadStepId]);
      if (assessment.verdict !== 'go') this.machine.noteFailure();
      return;
    }
  }

  private begin(id: ReadStepId): Measuring<Answers[ReadStepId]['assessment']> {
    switch (id) {
      case 'bridge':
        return measureBridge(this.machine, this.busVoltage());
      case 'input-circuit':
        return measureInput();
      case 'insulation':
        return measureInsulation(this.machine);
      case 'isolation':
        return measureIsolation(this.machine, pointsAtCableOrMotor(this.answers));
      case 'winding':
        return measureWinding(this.machine, 'cable.drive');
      case 'winding-motor':
        return measureWinding(this.machine, 'motor');
    }
  }

  /** The last reading of the bus that still holds. */
  private busVoltage() {
    const id = busReadingFor(this.answers, 'bridge');
    return (id && this.answers[id]?.answer.busVoltage) ?? missing;
  }

  private give<Id extends StepId>(id: Id, answer: Answers[Id]): void {
    this.seq += 1;
    this.answers = { ...this.answers, [id]: { seq: this.seq, answer } };
  }
}

function isMeasured(id: StepId): id is ReadStepId {
  return !(id in plainAnswers);
}
