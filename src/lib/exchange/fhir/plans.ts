/** What a team means to do, as FHIR R4 resources: the question and decisions, the sheet for a visit. */
import type { CarePlan, Task } from 'fhir/r4';
import type { RawCase } from '../../case/shape.ts';
import { carried, placed, plainText } from './carried.ts';
import * as codes from './codes.ts';
import { addressOf, identifierOf } from './names.ts';
import { concept, who, type Addressed, type Writing } from './resource.ts';

/** The question and the decisions as tasks of the team. */
export function tasks(raw: RawCase, { id, child }: Writing): Addressed<Task>[] {
  const question = plainText(raw.question ?? '');
  const asked: Addressed<Task>[] = raw.question
    ? [
        {
          address: addressOf(id, 'question'),
          resource: {
            resourceType: 'Task',
            ...carried({}, [], { question: raw.question }),
            identifier: [identifierOf(addressOf(id, 'question'))],
            status: 'requested',
            intent: 'proposal',
            code: { coding: [codes.part('question')] },
            ...(question ? { description: question } : {}),
            for: child,
          },
        },
      ]
    : [];
  const decided = (raw.decisions ?? []).map((decision, index): Addressed<Task> => {
    const address = addressOf(id, 'decision', String(index));
    const description = plainText(decision.text);
    const owner = who(decision.who);
    return {
      address,
      resource: {
        resourceType: 'Task',
        ...placed(
          index,
          carried(decision, ['on', 'text', 'who', 'by', 'done'], {
            text: decision.text,
            who: decision.who,
          }),
        ),
        identifier: [identifierOf(address)],
        status: decision.done ? 'completed' : 'requested',
        intent: 'plan',
        code: { coding: [codes.part('decision')] },
        ...(description ? { description } : {}),
        for: child,
        authoredOn: decision.on,
        ...(owner ? { owner } : {}),
        ...(decision.by ? { restriction: { period: { end: decision.by } } } : {}),
      },
    };
  });
  return [...asked, ...decided];
}

/** Whether a sheet's reflexes are all codes; else the sheet travels as a field. */
export function sheetFits(sheet: RawCase['sheet']): boolean {
  return sheet?.reflexes.every(codes.isCode) ?? true;
}

export function sheetPlan(raw: RawCase, { id, child, names }: Writing): Addressed<CarePlan>[] {
  const { sheet } = raw;
  if (!sheet || !sheetFits(sheet)) return [];
  const address = addressOf(id, 'sheet');
  return [
    {
      address,
      resource: {
        resourceType: 'CarePlan',
        ...carried(sheet, ['on', 'reflexes']),
        identifier: [identifierOf(address)],
        status: 'active',
        intent: 'plan',
        category: [{ coding: [codes.part('sheet')] }],
        subject: child,
        period: { start: sheet.on },
        ...(sheet.reflexes.length > 0
          ? {
              activity: sheet.reflexes.map((reflex) => ({
                detail: { code: concept('reflex', reflex, names), status: 'scheduled' as const },
              })),
            }
          : {}),
      },
    },
  ];
}
