/** Every source with a claim, or with a count of an answer. Explicit, so that a review sees what was added. */
import { source as allenCapute1986 } from './sources/allen-capute-1986.ts';
import { source as robinson1966 } from './sources/robinson-1966.ts';
import { source as birnholz1983 } from './sources/birnholz-1983.ts';
import { source as stumm2008 } from './sources/stumm-2008.ts';
import { source as miller2003 } from './sources/miller-2003.ts';
import { source as coryellCardinali1979 } from './sources/coryell-cardinali-1979.ts';
import { source as clopton2000 } from './sources/clopton-2000.ts';
import { source as futagiSuzuki1999 } from './sources/futagi-suzuki-1999.ts';
import { source as olhweiler2005 } from './sources/olhweiler-2005.ts';
import { source as capute1982Motor } from './sources/capute-1982-motor.ts';
import { source as snir2010 } from './sources/snir-2010.ts';
import { source as cupps1976 } from './sources/cupps-1976.ts';
import { source as tachibana1983 } from './sources/tachibana-1983.ts';
import { source as jaffe1994 } from './sources/jaffe-1994.ts';
import { source as romeo2009 } from './sources/romeo-2009.ts';
import { source as forma2019 } from './sources/forma-2019.ts';
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
import { source as shapiro1981 } from './sources/shapiro-1981.ts';
import { source as bartlett1997 } from './sources/bartlett-1997.ts';
import { source as okamoto2001 } from './sources/okamoto-2001.ts';
import { source as widstrom2011 } from './sources/widstrom-2011.ts';
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
import { source as cdc2022 } from './sources/cdc-2022.ts';
import { source as kumhar2002 } from './sources/kumhar-2002.ts';
import { source as gupta2003 } from './sources/gupta-2003.ts';
import { source as ohlweiler2002 } from './sources/ohlweiler-2002.ts';
import { source as wenzel1978 } from './sources/wenzel-1978.ts';
import { source as futagi1987 } from './sources/futagi-1987.ts';
import type { SourceData } from './types.ts';

export const SOURCES: readonly SourceData[] = [
  allenCapute1986,
  robinson1966,
  birnholz1983,
  stumm2008,
  miller2003,
  coryellCardinali1979,
  clopton2000,
  futagiSuzuki1999,
  olhweiler2005,
  capute1982Motor,
  snir2010,
  cupps1976,
  tachibana1983,
  jaffe1994,
  romeo2009,
  forma2019,
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
  shapiro1981,
  bartlett1997,
  okamoto2001,
  widstrom2011,
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
  cdc2022,
  kumhar2002,
  gupta2003,
  ohlweiler2002,
  wenzel1978,
  futagi1987,
];
