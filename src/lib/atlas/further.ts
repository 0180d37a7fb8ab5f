/**
 * What no age and no verdict rests on, loaded when it is first shown: sources that give context, evidence
 * or method, counts of something else than an answer (a part of it, a recording, patients), and what is
 * said beside a claim.
 */
import type { Count } from './count.ts';
import { REMARKS } from './remarks.ts';
import type { AtlasParts, Claim, SourceData } from './types.ts';
import { counts as coryellCardinali1979 } from './counts/coryell-cardinali-1979.ts';
import { counts as futagiSuzuki1999 } from './counts/futagi-suzuki-1999.ts';
import { counts as cupps1976 } from './counts/cupps-1976.ts';
import { counts as tachibana1983 } from './counts/tachibana-1983.ts';
import { counts as jaffe1994 } from './counts/jaffe-1994.ts';
import { counts as romeo2009 } from './counts/romeo-2009.ts';
import { counts as nyqvist1999 } from './counts/nyqvist-1999.ts';
import { counts as okamoto2001 } from './counts/okamoto-2001.ts';
import { counts as roncesvalles2000 } from './counts/roncesvalles-2000.ts';
import { counts as gupta2003 } from './counts/gupta-2003.ts';
import { source as anday1988 } from './sources/anday-1988.ts';
import { source as beintema1968 } from './sources/beintema-1968.ts';
import { source as liedermanCoryell1981 } from './sources/liederman-coryell-1981.ts';
import { source as zametkin1979 } from './sources/zametkin-1979.ts';
import { source as sekulic2009 } from './sources/sekulic-2009.ts';
import { source as richter1934 } from './sources/richter-1934.ts';
import { source as sohn2011 } from './sources/sohn-2011.ts';
import { source as marquis1984 } from './sources/marquis-1984.ts';
import { source as marquis1984Abs } from './sources/marquis-1984-abs.ts';
import { source as zafeiriou1995 } from './sources/zafeiriou-1995.ts';
import { source as zafeiriou2000 } from './sources/zafeiriou-2000.ts';
import { source as surowinska2023 } from './sources/surowinska-2023.ts';
import { source as babinskiNewborn1976 } from './sources/babinski-newborn-1976.ts';
import { source as kanda1985 } from './sources/kanda-1985.ts';
import { source as haley1986 } from './sources/haley-1986.ts';
import { source as romeo2011 } from './sources/romeo-2011.ts';
import { source as hym2023 } from './sources/hym-2023.ts';
import { source as thelen1982 } from './sources/thelen-1982.ts';
import { source as wolthuis2015 } from './sources/wolthuis-2015.ts';
import { source as gieysztor2018 } from './sources/gieysztor-2018.ts';
import { source as pecuch2021 } from './sources/pecuch-2021.ts';
import { source as parmenter1975 } from './sources/parmenter-1975.ts';
import { source as gpnotebookAtnr } from './sources/gpnotebook-atnr.ts';
import { source as drhull } from './sources/drhull.ts';
import { source as bellieni2005 } from './sources/bellieni-2005.ts';
import { source as kranen1997 } from './sources/kranen-1997.ts';
import { source as forslund1983 } from './sources/forslund-1983.ts';
import { source as majnemer1992 } from './sources/majnemer-1992.ts';
import { source as palmer1982 } from './sources/palmer-1982.ts';
import { source as futagi1992 } from './sources/futagi-1992.ts';
import { source as hedberg2005 } from './sources/hedberg-2005.ts';
import { source as aap2004 } from './sources/aap-2004.ts';
import { source as pediatrics2024 } from './sources/pediatrics-2024.ts';
import { source as acog700 } from './sources/acog-700.ts';
import { source as datingNotebook } from './sources/dating-notebook.ts';
import { source as radiology2024 } from './sources/radiology-2024.ts';
import { source as lee2017 } from './sources/lee-2017.ts';
import { source as hoffman2008 } from './sources/hoffman-2008.ts';
import { source as newcombe1998 } from './sources/newcombe-1998.ts';
import { source as prechtl1977 } from './sources/prechtl-1977.ts';
import { source as kuhlman1988 } from './sources/kuhlman-1988.ts';
import { source as hepper1994 } from './sources/hepper-1994.ts';
import { source as vanheteren2001 } from './sources/vanheteren-2001.ts';
import { source as smith1991 } from './sources/smith-1991.ts';
import { source as lawrence1953 } from './sources/lawrence-1953.ts';
import { source as flanagan2012 } from './sources/flanagan-2012.ts';
import { source as bradshaw2023 } from './sources/bradshaw-2023.ts';
import { source as pineda2016 } from './sources/pineda-2016.ts';
import { source as russell2019 } from './sources/russell-2019.ts';
import { source as hickey2021 } from './sources/hickey-2021.ts';
import { source as serra2025 } from './sources/serra-2025.ts';
import { source as zafeiriou1998 } from './sources/zafeiriou-1998.ts';
import { source as hamer2016 } from './sources/hamer-2016.ts';
import { source as ellenberg1981 } from './sources/ellenberg-1981.ts';
import { source as nelson1979 } from './sources/nelson-1979.ts';
import { source as hamer2018 } from './sources/hamer-2018.ts';
import { source as sarinoglu1996 } from './sources/sarinoglu-1996.ts';
import { source as hay2018 } from './sources/hay-2018.ts';
import { source as straathof2020 } from './sources/straathof-2020.ts';
import { source as boere2001 } from './sources/boere-2001.ts';
import { source as vanvlimmeren2008 } from './sources/vanvlimmeren-2008.ts';
import { source as tan1999 } from './sources/tan-1999.ts';
import { source as harris1984 } from './sources/harris-1984.ts';
import { source as stuberg1989 } from './sources/stuberg-1989.ts';
import { source as pavageau2020 } from './sources/pavageau-2020.ts';
import { source as alves2018 } from './sources/alves-2018.ts';
import { source as gagnon2012 } from './sources/gagnon-2012.ts';
import { source as cameron2006 } from './sources/cameron-2006.ts';
import { source as ling1970 } from './sources/ling-1970.ts';
import { source as xu2011 } from './sources/xu-2011.ts';
import { source as jaffe2000 } from './sources/jaffe-2000.ts';
import { source as cpPrompts } from './sources/cp-prompts.ts';
import { source as sweeney2013 } from './sources/sweeney-2013.ts';
import { source as allinson2017 } from './sources/allinson-2017.ts';
import { source as praveen2001 } from './sources/praveen-2001.ts';
import { source as saini2020 } from './sources/saini-2020.ts';
import { source as assist2017 } from './sources/assist-2017.ts';
import { source as lebonheurSpasms } from './sources/lebonheur-spasms.ts';
import { source as childrensSpasms } from './sources/childrens-spasms.ts';
import { source as dftbSpasms } from './sources/dftb-spasms.ts';
import { source as wikipediaMoro } from './sources/wikipedia-moro.ts';
import { source as physiopediaMoro } from './sources/physiopedia-moro.ts';
import { source as meshStartle } from './sources/mesh-startle.ts';
import { source as stanfordGalant } from './sources/stanford-galant.ts';
import { source as alfonsoTraction } from './sources/alfonso-traction.ts';
import { source as otGlossary } from './sources/ot-glossary.ts';
import { source as tiltingHowto } from './sources/tilting-howto.ts';
import { source as ncdpi2015 } from './sources/ncdpi-2015.ts';
import { source as ronnqvist1998 } from './sources/ronnqvist-1998.ts';
import { source as ronnqvist2000 } from './sources/ronnqvist-2000.ts';

/** By source, beside the counts that it has in its own file. */
const COUNTS: Readonly<Record<string, readonly Count[]>> = {
  'coryell-cardinali-1979': coryellCardinali1979,
  'futagi-suzuki-1999': futagiSuzuki1999,
  'cupps-1976': cupps1976,
  'tachibana-1983': tachibana1983,
  'jaffe-1994': jaffe1994,
  'romeo-2009': romeo2009,
  'nyqvist-1999': nyqvist1999,
  'okamoto-2001': okamoto2001,
  'roncesvalles-2000': roncesvalles2000,
  'gupta-2003': gupta2003,
};

const SOURCES: readonly SourceData[] = [
  anday1988,
  beintema1968,
  liedermanCoryell1981,
  zametkin1979,
  sekulic2009,
  richter1934,
  sohn2011,
  marquis1984,
  marquis1984Abs,
  zafeiriou1995,
  zafeiriou2000,
  surowinska2023,
  babinskiNewborn1976,
  kanda1985,
  haley1986,
  romeo2011,
  hym2023,
  thelen1982,
  wolthuis2015,
  gieysztor2018,
  pecuch2021,
  parmenter1975,
  gpnotebookAtnr,
  drhull,
  bellieni2005,
  kranen1997,
  forslund1983,
  majnemer1992,
  palmer1982,
  futagi1992,
  hedberg2005,
  aap2004,
  pediatrics2024,
  acog700,
  datingNotebook,
  radiology2024,
  lee2017,
  hoffman2008,
  newcombe1998,
  prechtl1977,
  kuhlman1988,
  hepper1994,
  vanheteren2001,
  smith1991,
  lawrence1953,
  flanagan2012,
  bradshaw2023,
  pineda2016,
  russell2019,
  hickey2021,
  serra2025,
  zafeiriou1998,
  hamer2016,
  ellenberg1981,
  nelson1979,
  hamer2018,
  sarinoglu1996,
  hay2018,
  straathof2020,
  boere2001,
  vanvlimmeren2008,
  tan1999,
  harris1984,
  stuberg1989,
  pavageau2020,
  alves2018,
  gagnon2012,
  cameron2006,
  ling1970,
  xu2011,
  jaffe2000,
  cpPrompts,
  sweeney2013,
  allinson2017,
  praveen2001,
  saini2020,
  assist2017,
  lebonheurSpasms,
  childrensSpasms,
  dftbSpasms,
  wikipediaMoro,
  physiopediaMoro,
  meshStartle,
  stanfordGalant,
  alfonsoTraction,
  otGlossary,
  tiltingHowto,
  ncdpi2015,
  ronnqvist1998,
  ronnqvist2000,
];

/** A source's claims, each with what is said beside it. */
function remarked({ id, claims }: SourceData): readonly Claim[] {
  const own = REMARKS[id];
  if (!own) return claims;
  const rows = new Map<string, number>();
  return claims.map((claim) => {
    const row = rows.get(claim.reflex) ?? 0;
    rows.set(claim.reflex, row + 1);
    return { ...claim, ...own[claim.reflex]?.[row] };
  });
}

/** The parts of an atlas with all of that in them. */
export const withFurther = (parts: AtlasParts): AtlasParts => ({
  ...parts,
  sources: [
    ...parts.sources.map((source) => ({
      ...source,
      claims: remarked(source),
      counts: [...source.counts, ...(COUNTS[source.id] ?? [])],
    })),
    ...SOURCES,
  ],
});
