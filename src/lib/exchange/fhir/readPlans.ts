/** What a team means to do, read off FHIR R4 tasks and a care plan: the question, decisions, the sheet. */
import * as codes from './codes.ts';
import { carriedBy, day, exact, inOrder, type Entry } from './entry.ts';
import { at, codeIn, listAt, textAt, type Fields } from './value.ts';

function readDecision(task: Fields): unknown {
  const { text, who, ...carried } = carriedBy(task);
  return {
    ...carried,
    on: day(textAt(task, 'authoredOn')) ?? '',
    text: exact(textAt(task, 'description'), text),
    who: exact(textAt(at(task, 'owner'), 'display'), who),
    by: day(textAt(at(at(task, 'restriction'), 'period'), 'end')) ?? '',
    done: textAt(task, 'status') === 'completed',
  };
}

function readSheet(plan: Fields): unknown {
  return {
    ...carriedBy(plan),
    on: day(textAt(at(plan, 'period'), 'start')) ?? '',
    reflexes: listAt(plan, 'activity').flatMap(
      (one) => codeIn(at(at(one, 'detail'), 'code'), codes.OWN_SYSTEMS.reflex) ?? [],
    ),
  };
}

/** The fields of a record that hold what the team means to do; what is empty is left away. */
export function readPlans(parts: readonly Entry[]): object {
  const tasks = (code: string): Entry[] =>
    parts.filter(
      ({ type, resource }) =>
        type === 'Task' && codeIn(at(resource, 'code'), codes.OWN_SYSTEMS.record) === code,
    );
  const asked = tasks('question')[0];
  const question = asked
    ? exact(textAt(asked.resource, 'description'), carriedBy(asked.resource).question)
    : undefined;
  const decisions = inOrder(tasks('decision')).map(({ resource }) => readDecision(resource));
  const plan = parts.find(({ type }) => type === 'CarePlan');
  return {
    ...(question ? { question } : {}),
    ...(decisions.length > 0 ? { decisions } : {}),
    ...(plan ? { sheet: readSheet(plan.resource) } : {}),
  };
}
