/** How a child was dated, read off FHIR R4 observations: gestation, due date and how they were found. */
import { formatGestation } from '../../age/gestation.ts';
import * as codes from './codes.ts';
import { day, type Entry, type Faults } from './entry.ts';
import { at, codeIn, listAt, textAt } from './value.ts';

/** Gestation, due date and how they were found; one that was derived from the other is left away. */
export function readDating(parts: readonly Entry[], faults: Faults): object {
  const dated = (code: string | undefined): Entry | undefined => {
    const found = parts.filter(
      ({ type, resource }) =>
        type === 'Observation' && codeIn(at(resource, 'code'), codes.LOINC) === code,
    );
    return found.find(({ resource }) => listAt(resource, 'derivedFrom').length === 0) ?? found[0];
  };
  const given = (one: Entry | undefined): boolean =>
    one !== undefined && listAt(one.resource, 'derivedFrom').length === 0;
  const gestation = dated(codes.GESTATION.code);
  const due = dated(codes.DUE.code);
  const byDue = due !== undefined && (given(due) || !gestation);
  const byGestation = gestation !== undefined && (given(gestation) || !byDue);
  const method = [byGestation ? gestation : undefined, due]
    .map((one) => one && codeIn(at(one.resource, 'method'), codes.OWN_SYSTEMS.dating))
    .find((code) => code !== undefined);
  return {
    ...(byGestation ? { gestation: readGestation(gestation, faults) } : {}),
    ...(byDue ? { due: day(textAt(due.resource, 'valueDateTime')) ?? '' } : {}),
    dating: method ?? 'unknown',
  };
}

/** A gestation in whole days, from days or weeks. */
function readGestation(entry: Entry, faults: Faults): string {
  const quantity = at(entry.resource, 'valueQuantity');
  const value = at(quantity, 'value');
  const unit = textAt(quantity, 'code') ?? textAt(quantity, 'unit');
  const perUnit = unit === 'd' ? 1 : unit === 'wk' ? 7 : undefined;
  const days = typeof value === 'number' && perUnit ? value * perUnit : NaN;
  if (Number.isInteger(days) && days >= 0 && days < 1000) return formatGestation(days);
  faults.refuse(entry, 'no-gestation', 'valueQuantity');
  return '';
}
