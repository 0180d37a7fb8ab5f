/** Every source. Explicit, so that a review sees what was added. */
import { source as allenCapute1986 } from './sources/allen-capute-1986.ts';
import { source as robinson1966 } from './sources/robinson-1966.ts';
import { source as birnholz1983 } from './sources/birnholz-1983.ts';
import { source as stumm2008 } from './sources/stumm-2008.ts';
import { source as miller2003 } from './sources/miller-2003.ts';
import { source as coryellCardinali1979 } from './sources/coryell-cardinali-1979.ts';
import { source as clopton2000 } from './sources/clopton-2000.ts';
import { source as anday1988 } from './sources/anday-1988.ts';
import { source as beintema1968 } from './sources/beintema-1968.ts';
import { source as liedermanCoryell1981 } from './sources/liederman-coryell-1981.ts';
import { source as zametkin1979 } from './sources/zametkin-1979.ts';
import { source as sekulic2009 } from './sources/sekulic-2009.ts';
import { source as richter1934 } from './sources/richter-1934.ts';
import { source as futagiSuzuki1999 } from './sources/futagi-suzuki-1999.ts';
import { source as olhweiler2005 } from './sources/olhweiler-2005.ts';
import { source as sohn2011 } from './sources/sohn-2011.ts';
import { source as marquis1984 } from './sources/marquis-1984.ts';
import { source as marquis1984Abs } from './sources/marquis-1984-abs.ts';
import { source as capute1982Motor } from './sources/capute-1982-motor.ts';
import { source as zafeiriou1995 } from './sources/zafeiriou-1995.ts';
import { source as zafeiriou2000 } from './sources/zafeiriou-2000.ts';
import { source as surowinska2023 } from './sources/surowinska-2023.ts';
import { source as babinskiNewborn1976 } from './sources/babinski-newborn-1976.ts';
import { source as snir2010 } from './sources/snir-2010.ts';
import { source as cupps1976 } from './sources/cupps-1976.ts';
import { source as kanda1985 } from './sources/kanda-1985.ts';
import { source as tachibana1983 } from './sources/tachibana-1983.ts';
import { source as haley1986 } from './sources/haley-1986.ts';
import { source as jaffe1994 } from './sources/jaffe-1994.ts';
import { source as romeo2009 } from './sources/romeo-2009.ts';
import { source as romeo2011 } from './sources/romeo-2011.ts';
import { source as forma2019 } from './sources/forma-2019.ts';
import { source as hym2023 } from './sources/hym-2023.ts';
import { source as thelen1982 } from './sources/thelen-1982.ts';
import { source as wolthuis2015 } from './sources/wolthuis-2015.ts';
import { source as gieysztor2018 } from './sources/gieysztor-2018.ts';
import { source as pecuch2021 } from './sources/pecuch-2021.ts';
import { source as parmenter1975 } from './sources/parmenter-1975.ts';
import { source as futagi2012 } from './sources/futagi-2012.ts';
import { source as futagi2013 } from './sources/futagi-2013.ts';
import { source as zafeiriou2004 } from './sources/zafeiriou-2004.ts';
import { source as statpearlsMoro } from './sources/statpearls-moro.ts';
import { source as dreeben2008 } from './sources/dreeben-2008.ts';
import { source as molnarHandout } from './sources/molnar-handout.ts';
import { source as osullivanHandout } from './sources/osullivan-handout.ts';
import { source as fiorentino1963 } from './sources/fiorentino-1963.ts';
import { source as vangijn1977 } from './sources/vangijn-1977.ts';
import { source as nelson } from './sources/nelson.ts';
import { source as bates } from './sources/bates.ts';
import { source as commonPractice } from './sources/common-practice.ts';
import { source as milani1967 } from './sources/milani-1967.ts';
import { source as volpe } from './sources/volpe.ts';
import { source as devries1982 } from './sources/devries-1982.ts';
import { source as beststart } from './sources/beststart.ts';
import { source as adamBabinski } from './sources/adam-babinski.ts';
import { source as cincinnati } from './sources/cincinnati.ts';
import { source as hpoNeck } from './sources/hpo-neck.ts';
import { source as wikipediaLandau } from './sources/wikipedia-landau.ts';
import { source as physiopediaTlr } from './sources/physiopedia-tlr.ts';
import { source as stedmanStartle } from './sources/stedman-startle.ts';
import { source as lancasterGlossary } from './sources/lancaster-glossary.ts';
import { source as gpnotebookAtnr } from './sources/gpnotebook-atnr.ts';
import { source as drhull } from './sources/drhull.ts';
import { source as kumc2012 } from './sources/kumc-2012.ts';
import { source as obaidat2023 } from './sources/obaidat-2023.ts';
import { source as pediatriceducation2020 } from './sources/pediatriceducation-2020.ts';
import { source as statpearlsRooting } from './sources/statpearls-rooting.ts';
import { source as nyqvist1999 } from './sources/nyqvist-1999.ts';
import { source as mizuno2003 } from './sources/mizuno-2003.ts';
import { source as gewolb2001 } from './sources/gewolb-2001.ts';
import { source as andrews1994 } from './sources/andrews-1994.ts';
import { source as martakis2017 } from './sources/martakis-2017.ts';
import { source as shahidullah1993 } from './sources/shahidullah-1993.ts';
import { source as kisilevsky2000 } from './sources/kisilevsky-2000.ts';
import { source as bellieni2005 } from './sources/bellieni-2005.ts';
import { source as shapiro1981 } from './sources/shapiro-1981.ts';
import { source as kranen1997 } from './sources/kranen-1997.ts';
import { source as forslund1983 } from './sources/forslund-1983.ts';
import { source as majnemer1992 } from './sources/majnemer-1992.ts';
import { source as palmer1982 } from './sources/palmer-1982.ts';
import { source as bartlett1997 } from './sources/bartlett-1997.ts';
import { source as futagi1992 } from './sources/futagi-1992.ts';
import { source as okamoto2001 } from './sources/okamoto-2001.ts';
import { source as widstrom2011 } from './sources/widstrom-2011.ts';
import { source as hedberg2005 } from './sources/hedberg-2005.ts';
import { source as haddersAlgra2005 } from './sources/hadders-algra-2005.ts';
import { source as roncesvalles2000 } from './sources/roncesvalles-2000.ts';
import { source as gpnotebookCrossed } from './sources/gpnotebook-crossed.ts';
import { source as wikipediaStnr } from './sources/wikipedia-stnr.ts';
import { source as wikipediaPalmar } from './sources/wikipedia-palmar.ts';
import { source as wikipediaEsStepping } from './sources/wikipedia-es-stepping.ts';
import { source as wikimdGalant } from './sources/wikimd-galant.ts';
import { source as wikimdTlr } from './sources/wikimd-tlr.ts';
import { source as dictParachute } from './sources/dict-parachute.ts';
import { source as peelHealth } from './sources/peel-health.ts';
import { source as japanExam2020 } from './sources/japan-exam-2020.ts';
import { source as medicmediaQb } from './sources/medicmedia-qb.ts';
import { source as sadurni2008 } from './sources/sadurni-2008.ts';
import { source as garciaSanchez } from './sources/garcia-sanchez.ts';
import { source as payneIsaacs } from './sources/payne-isaacs.ts';
import { source as lallyValentine } from './sources/lally-valentine.ts';
import { source as saintAnneDargassies } from './sources/saint-anne-dargassies.ts';
import { source as ubcKin355 } from './sources/ubc-kin355.ts';
import { source as brownMedpeds } from './sources/brown-medpeds.ts';
import { source as who2006 } from './sources/who-2006.ts';
import { source as toe1948 } from './sources/toe-1948.ts';
import { source as clinic2015 } from './sources/clinic-2015.ts';
import { source as clinic2021 } from './sources/clinic-2021.ts';
import { source as healthExplainer } from './sources/health-explainer.ts';
import { source as aap2004 } from './sources/aap-2004.ts';
import { source as pediatrics2024 } from './sources/pediatrics-2024.ts';
import { source as acog700 } from './sources/acog-700.ts';
import { source as datingNotebook } from './sources/dating-notebook.ts';
import { source as radiology2024 } from './sources/radiology-2024.ts';
import { source as lee2017 } from './sources/lee-2017.ts';
import { source as hoffman2008 } from './sources/hoffman-2008.ts';
import { source as cdc2022 } from './sources/cdc-2022.ts';
import { source as newcombe1998 } from './sources/newcombe-1998.ts';
import { source as prechtl1977 } from './sources/prechtl-1977.ts';
import { source as kumhar2002 } from './sources/kumhar-2002.ts';
import { source as gupta2003 } from './sources/gupta-2003.ts';
import { source as ohlweiler2002 } from './sources/ohlweiler-2002.ts';
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
import { source as wenzel1978 } from './sources/wenzel-1978.ts';
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
import { source as futagi1987 } from './sources/futagi-1987.ts';
import { source as ronnqvist1998 } from './sources/ronnqvist-1998.ts';
import { source as ronnqvist2000 } from './sources/ronnqvist-2000.ts';
import type { SourceData } from './types.ts';

export const SOURCES: readonly SourceData[] = [
  allenCapute1986,
  robinson1966,
  birnholz1983,
  stumm2008,
  miller2003,
  coryellCardinali1979,
  clopton2000,
  anday1988,
  beintema1968,
  liedermanCoryell1981,
  zametkin1979,
  sekulic2009,
  richter1934,
  futagiSuzuki1999,
  olhweiler2005,
  sohn2011,
  marquis1984,
  marquis1984Abs,
  capute1982Motor,
  zafeiriou1995,
  zafeiriou2000,
  surowinska2023,
  babinskiNewborn1976,
  snir2010,
  cupps1976,
  kanda1985,
  tachibana1983,
  haley1986,
  jaffe1994,
  romeo2009,
  romeo2011,
  forma2019,
  hym2023,
  thelen1982,
  wolthuis2015,
  gieysztor2018,
  pecuch2021,
  parmenter1975,
  futagi2012,
  futagi2013,
  zafeiriou2004,
  statpearlsMoro,
  dreeben2008,
  molnarHandout,
  osullivanHandout,
  fiorentino1963,
  vangijn1977,
  nelson,
  bates,
  commonPractice,
  milani1967,
  volpe,
  devries1982,
  beststart,
  adamBabinski,
  cincinnati,
  hpoNeck,
  wikipediaLandau,
  physiopediaTlr,
  stedmanStartle,
  lancasterGlossary,
  gpnotebookAtnr,
  drhull,
  kumc2012,
  obaidat2023,
  pediatriceducation2020,
  statpearlsRooting,
  nyqvist1999,
  mizuno2003,
  gewolb2001,
  andrews1994,
  martakis2017,
  shahidullah1993,
  kisilevsky2000,
  bellieni2005,
  shapiro1981,
  kranen1997,
  forslund1983,
  majnemer1992,
  palmer1982,
  bartlett1997,
  futagi1992,
  okamoto2001,
  widstrom2011,
  hedberg2005,
  haddersAlgra2005,
  roncesvalles2000,
  gpnotebookCrossed,
  wikipediaStnr,
  wikipediaPalmar,
  wikipediaEsStepping,
  wikimdGalant,
  wikimdTlr,
  dictParachute,
  peelHealth,
  japanExam2020,
  medicmediaQb,
  sadurni2008,
  garciaSanchez,
  payneIsaacs,
  lallyValentine,
  saintAnneDargassies,
  ubcKin355,
  brownMedpeds,
  who2006,
  toe1948,
  clinic2015,
  clinic2021,
  healthExplainer,
  aap2004,
  pediatrics2024,
  acog700,
  datingNotebook,
  radiology2024,
  lee2017,
  hoffman2008,
  cdc2022,
  newcombe1998,
  prechtl1977,
  kumhar2002,
  gupta2003,
  ohlweiler2002,
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
  wenzel1978,
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
  futagi1987,
  ronnqvist1998,
  ronnqvist2000,
];
