/** The full citation of every source, loaded when a source is first opened. Figures and short facts only are used here. */
import type { Citation } from './types.ts';

export const CITATIONS: Readonly<Record<string, Citation>> = {
  'allen-capute-1986': {
    citation:
      'Allen MC, Capute AJ. The evolution of primitive reflexes in extremely premature infants. Pediatric Research 20(12):1284-1289. (1986)',
    authors: 'Allen MC, Capute AJ',
    title: 'The evolution of primitive reflexes in extremely premature infants',
    container: 'Pediatric Research 20(12):1284-1289',
    doi: '10.1203/00006450-198612000-00018',
    url: 'https://www.nature.com/articles/pr1986746',
    licence: 'free to read; not stated as open licence',
    note: 'Abstract read. 47 viable infants, weekly from 1 week of age, from 25 weeks postconceptional age. The 1985 conference abstract of the same cohort (Pediatr Res 19:331, doi 10.1203/00006450-198504000-01345) words the onset of positive support and stepping as 30 weeks in some; the 1986 paper says occasionally before 30 weeks.',
  },
  'robinson-1966': {
    citation:
      'Robinson RJ. Assessment of gestational age by neurological examination. Archives of Disease in Childhood 41:437-447. (1966)',
    authors: 'Robinson RJ',
    title: 'Assessment of gestational age by neurological examination',
    container: 'Archives of Disease in Childhood 41:437-447',
    doi: '10.1136/adc.41.218.437',
    url: 'https://scilit.com/publications/8da78841d5f1d58bd9a161044662d94d',
    licence: 'not open',
    note: 'Abstract read. 219 examinations of 62 infants, 25-42 weeks. Author and year as another paper cites them; volume and first page follow from the DOI; title and last page from memory.',
  },
  'birnholz-1983': {
    citation:
      'Birnholz JC, Benacerraf BR. The development of human fetal hearing. Science 222(4623):516-518. (1983)',
    authors: 'Birnholz JC, Benacerraf BR',
    title: 'The development of human fetal hearing',
    container: 'Science 222(4623):516-518',
    doi: '10.1126/science.6623091',
    url: 'https://www.science.org/doi/10.1126/science.6623091',
    licence: 'not open',
    note: 'Abstract read. Ultrasound observation of a blink-startle to vibroacoustic stimulation.',
  },
  'stumm-2008': {
    citation:
      'Stumm S, Barlow SM, Estep M, et al. Respiratory distress syndrome degrades the fine structure of the non-nutritive suck in preterm infants. Journal of Neonatal Nursing. (2008)',
    authors: 'Stumm S, Barlow SM, Estep M, et al.',
    title:
      'Respiratory distress syndrome degrades the fine structure of the non-nutritive suck in preterm infants',
    container: 'Journal of Neonatal Nursing',
    pmcid: 'PMC2443682',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC2443682',
    licence: 'author manuscript in a public archive; reuse licence not stated',
    note: 'Opening read. Gives the non-nutritive suck onset window and attributes it to Hack et al. 1985. Author list and journal from memory.',
  },
  'miller-2003': {
    citation:
      'Miller JL, Sonies BC, Macedonia C. Emergence of oropharyngeal, laryngeal and swallowing activity in the developing fetal upper aerodigestive tract: an ultrasound evaluation. Early Human Development 71(1):61-87. (2003)',
    authors: 'Miller JL, Sonies BC, Macedonia C',
    title:
      'Emergence of oropharyngeal, laryngeal and swallowing activity in the developing fetal upper aerodigestive tract: an ultrasound evaluation',
    container: 'Early Human Development 71(1):61-87',
    doi: '10.1016/S0378-3782(02)00110-X',
    url: 'https://doi.org/10.1016/S0378-3782(02)00110-X',
    licence: 'not open',
    note: 'Abstract read. 62 control fetuses, 15-38 weeks; the study begins at 15 weeks, so 15 is its earliest observation, not an onset.',
  },
  'coryell-cardinali-1979': {
    citation:
      'Coryell J, Cardinali N. The asymmetrical tonic neck reflex in normal full-term infants. Physical Therapy 59(6):747-753. (1979)',
    authors: 'Coryell J, Cardinali N',
    title: 'The asymmetrical tonic neck reflex in normal full-term infants',
    container: 'Physical Therapy 59(6):747-753',
    doi: '10.1093/ptj/59.6.747',
    url: 'https://doi.org/10.1093/ptj/59.6.747',
    licence: 'not open',
    note: 'Abstract read. 12 infants, seven visits in the first 12 weeks.',
  },
  'clopton-2000': {
    citation:
      'Clopton NA, et al. Investigation of trunk and extremity movement associated with passive head turning in newborns. Physical Therapy 80(2):152-159. (2000)',
    authors: 'Clopton NA, et al.',
    title:
      'Investigation of trunk and extremity movement associated with passive head turning in newborns',
    container: 'Physical Therapy 80(2):152-159',
    licence: 'not open',
    note: 'Abstract read. 42 healthy newborns within 5 days of birth: limbs straighter on the face side, trunk convex to the face side, more often than chance.',
  },
  'anday-1988': {
    citation:
      'Anday EK, Cohen ME, Hoffman HS. Reflex modification audiometry: assessment of acoustic sensory processing in the term neonate. Pediatric Research 23:357-363. (1988)',
    authors: 'Anday EK, Cohen ME, Hoffman HS',
    title:
      'Reflex modification audiometry: assessment of acoustic sensory processing in the term neonate',
    container: 'Pediatric Research 23:357-363',
    url: 'https://pubmed.ncbi.nlm.nih.gov/3374989',
    licence: 'free to read; not stated as open licence',
    note: 'Abstract read. 98 term newborns, taps between the brows given by an instrument. Second author from memory.',
  },
  'beintema-1968': {
    citation:
      'Beintema DJ. A neurological study of newborn infants. Clinics in Developmental Medicine 28. Spastics International Medical Publications with Heinemann, London. (1968)',
    authors: 'Beintema DJ',
    title: 'A neurological study of newborn infants',
    container: 'Clinics in Developmental Medicine 28',
    licence: 'not open',
    note: 'A passage on responses to sound read, on a page that repeats pieces of the book out of order: it gives the figures of Yang 1962 and of Eisenberg et al. (newborns of the first to the ninth day). The tables of the book itself were not seen and would give shares for most responses of the newborn.',
  },
  'liederman-coryell-1981': {
    citation:
      'Liederman J, Coryell J. Right-hand preference facilitated by rightward turning biases during infancy. Developmental Psychobiology 14(5):439-450. (1981)',
    authors: 'Liederman J, Coryell J',
    title: 'Right-hand preference facilitated by rightward turning biases during infancy',
    container: 'Developmental Psychobiology 14(5):439-450',
    doi: '10.1002/dev.420140506',
    url: 'https://scilit.com/publications/30bf43453df933ffc33c9aa86d92f53b',
    licence: 'not open',
    note: 'Abstract read. 20 infants filmed with the head turned by themselves and by an examiner, to 30 and 70 degrees, to each side. Their age (4 to 10 weeks) was read in the abstract of another paper on 20 infants with the same design, Factors influencing the asymmetrical tonic neck reflex in normal infants; that they are the same infants is an inference.',
  },
  'zametkin-1979': {
    citation:
      'Zametkin AJ, Stevens JR, Pittman R. Ontogeny of spontaneous blinking and of habituation of the blink reflex. Annals of Neurology 5(5):453-457. (1979)',
    authors: 'Zametkin AJ, Stevens JR, Pittman R',
    title: 'Ontogeny of spontaneous blinking and of habituation of the blink reflex',
    container: 'Annals of Neurology 5(5):453-457',
    doi: '10.1002/ana.410050509',
    url: 'https://scilit.com/publications/370295bc71e057cd8396931aa10592d2',
    licence: 'not open',
    note: 'Abstract read. Taps between the brows in 164 infants and children from 2 days to 18 years; mean number of taps until the blink stopped 2.7 (SD 1.2) at 0-2 months, 13.3 (SD 5.6) at 3-4 years. Authors from memory.',
  },
  'sekulic-2009': {
    citation:
      'Sekulic S, et al. Decreased expression of the righting reflex and locomotor movements in breech-presenting newborns in the first days of life. Early Human Development 85(4):263-266. (2009)',
    authors: 'Sekulic S, et al.',
    title:
      'Decreased expression of the righting reflex and locomotor movements in breech-presenting newborns in the first days of life',
    container: 'Early Human Development 85(4):263-266',
    doi: '10.1016/j.earlhumdev.2008.11.001',
    url: 'https://pubmed.ncbi.nlm.nih.gov/19028029',
    licence: 'not open',
    note: 'Abstract read. 50 term newborns from breech and 87 from head presentation, healthy, all born by planned caesarean section, examined on days 2 and 4; scores, no shares. First author from memory.',
  },
  'richter-1934': {
    citation:
      'Richter CP. The grasp reflex of the new-born infant. American Journal of Diseases of Children 48(2):327-332. (1934)',
    authors: 'Richter CP',
    title: 'The grasp reflex of the new-born infant',
    container: 'American Journal of Diseases of Children 48(2):327-332',
    licence: 'not stated',
    note: 'Opening read: what it says of presence it takes from earlier studies. Journal, volume, pages and year from memory; the studies it cites are of 1931 and 1933.',
  },
  'futagi-suzuki-1999': {
    citation:
      'Futagi Y, Suzuki Y, Goto M. Clinical significance of plantar grasp response in infants. Pediatric Neurology 20(2):111-115. (1999)',
    authors: 'Futagi Y, Suzuki Y, Goto M',
    title: 'Clinical significance of plantar grasp response in infants',
    container: 'Pediatric Neurology 20(2):111-115',
    licence: 'not open',
    note: 'Abstract, title, journal and pages read. 834 control infants; 93 infants with an absent or weak response followed up. Author list from memory.',
  },
  'olhweiler-2005': {
    citation:
      'Olhweiler L, Silva AR, Rotta NT. Primitive reflex in premature healthy newborns during the first year. Arquivos de Neuro-Psiquiatria 63(2A):294-297. (2005)',
    authors: 'Olhweiler L, Silva AR, Rotta NT',
    title: 'Primitive reflex in premature healthy newborns during the first year',
    container: 'Arquivos de Neuro-Psiquiatria 63(2A):294-297',
    licence: 'open access (journal later CC BY-NC); check the article page',
    note: 'Portuguese and English abstracts read, in two copies. Preterm infants, corrected age 3, 6, 9, 12 months. Volume and pages from memory. Sample size not given in the abstract; 2.7 percent fits 1 in 37.',
  },
  'sohn-2011': {
    citation:
      'Sohn M, Ahn Y, Lee S. Assessment of primitive reflexes in high-risk newborns. Journal of Clinical Medicine Research 3(6):285-290. (2011)',
    authors: 'Sohn M, Ahn Y, Lee S',
    title: 'Assessment of primitive reflexes in high-risk newborns',
    container: 'Journal of Clinical Medicine Research 3(6):285-290',
    doi: '10.4021/jocmr706w',
    url: 'https://jocmr.org/index.php/JOCMR/article/view/706',
    licence: 'open access; article copyright held by the authors',
    note: 'Abstract read. 67 intensive-care newborns, one examination each.',
  },
  'marquis-1984': {
    citation:
      'Marquis PJ, Ruiz NA, Lundy MS, Dillard RG. Retention of primitive reflexes and delayed motor development in very low birth weight infants. Journal of Developmental and Behavioral Pediatrics 5(3):124-126. (1984)',
    authors: 'Marquis PJ, Ruiz NA, Lundy MS, Dillard RG',
    title:
      'Retention of primitive reflexes and delayed motor development in very low birth weight infants',
    container: 'Journal of Developmental and Behavioral Pediatrics 5(3):124-126',
    url: 'https://pubmed.ncbi.nlm.nih.gov/6736257',
    licence: 'not open',
    note: 'Abstract read. 127 infants under 1501 g and 37 term infants at 4 months corrected: ATNR, TLR, Moro. Three authors as in the conference abstract of the group; the fourth from memory.',
  },
  'marquis-1984-abs': {
    citation:
      'Marquis P, Ruiz N, Lundy M, et al. Primitive reflex assessment as a predictor of outcome in very low birth weight infants. Pediatric Research 18(Suppl 4):379. (1984)',
    authors: 'Marquis P, Ruiz N, Lundy M, et al.',
    title: 'Primitive reflex assessment as a predictor of outcome in very low birth weight infants',
    container: 'Pediatric Research 18(Suppl 4):379',
    doi: '10.1203/00006450-198404001-01718',
    url: 'https://doi.org/10.1203/00006450-198404001-01718',
    licence: 'not open',
    note: 'Conference abstract read. 103 infants at 4 and 12 months corrected.',
  },
  'capute-1982-motor': {
    citation:
      'Capute AJ, Shapiro BK, Accardo PJ, Wachtel RC, Ross A, Palmer FB. Motor functions: associated primitive reflex profiles. Developmental Medicine and Child Neurology 24(5):662-669. (1982)',
    authors: 'Capute AJ, Shapiro BK, Accardo PJ, Wachtel RC, Ross A, Palmer FB',
    title: 'Motor functions: associated primitive reflex profiles',
    container: 'Developmental Medicine and Child Neurology 24(5):662-669',
    doi: '10.1111/j.1469-8749.1982.tb13677.x',
    pmid: '6183159',
    url: 'https://scilit.com/publications/c586e85e94096705325b5ee548a1fdf4',
    licence: 'not open',
    note: 'Abstract read in two copies. 177 healthy infants; ATNR, TLR-supine and Moro from birth to 12 months.',
  },
  'zafeiriou-1995': {
    citation:
      'Zafeiriou DI, Tsikoulas IG, Kremenopoulos GM. Prospective follow-up of primitive reflex profiles in high-risk infants: clues to an early diagnosis of cerebral palsy. Pediatric Neurology 13(2):148-152. (1995)',
    authors: 'Zafeiriou DI, Tsikoulas IG, Kremenopoulos GM',
    title:
      'Prospective follow-up of primitive reflex profiles in high-risk infants: clues to an early diagnosis of cerebral palsy',
    container: 'Pediatric Neurology 13(2):148-152',
    licence: 'not open',
    note: 'Abstract read. 204 high-risk infants followed to 2 years: 58 cerebral palsy, 22 developmental delay, 124 typical.',
  },
  'zafeiriou-2000': {
    citation:
      'Zafeiriou DI. Plantar grasp reflex in high-risk infants during the first year of life. Pediatric Neurology 22(1):75-76. (2000)',
    authors: 'Zafeiriou DI',
    title: 'Plantar grasp reflex in high-risk infants during the first year of life',
    container: 'Pediatric Neurology 22(1):75-76',
    doi: '10.1016/s0887-8994(99)00110-1',
    url: 'https://pubmed.ncbi.nlm.nih.gov/10669212',
    licence: 'not open',
    note: 'Abstract read.',
  },
  'surowinska-2023': {
    citation:
      'Surowinska J, Sobieska M, Gajewska E, et al. Qualitative assessment in the third month of life allows for a better prognosis of the achievement of motor milestones versus assessment of pathological reflexes: prospective studies on Polish children. Frontiers in Public Health 11:1253137. (2023)',
    authors: 'Surowinska J, Sobieska M, Gajewska E, et al.',
    title:
      'Qualitative assessment in the third month of life allows for a better prognosis of the achievement of motor milestones versus assessment of pathological reflexes: prospective studies on Polish children',
    container: 'Frontiers in Public Health 11:1253137',
    doi: '10.3389/fpubh.2023.1253137',
    url: 'https://www.frontiersin.org/journals/public-health/articles/10.3389/fpubh.2023.1253137/full',
    licence: 'CC BY 4.0',
    note: 'Abstract read. 107 infants (83 term, 24 preterm) seen at 3, 9 and 16 months.',
  },
  'babinski-newborn-1976': {
    citation:
      'Ross ED, Velez-Borras J, Rosman NP. The significance of the Babinski sign in the newborn: a reappraisal. Pediatrics 57(1):13-15. (1976)',
    authors: 'Ross ED, Velez-Borras J, Rosman NP',
    title: 'The significance of the Babinski sign in the newborn: a reappraisal',
    container: 'Pediatrics 57(1):13-15',
    url: 'https://pubmed.ncbi.nlm.nih.gov/1082122',
    licence: 'not open',
    note: 'Abstract, title, journal and pages read. Author list from memory.',
  },
  'snir-2010': {
    citation:
      "Snir M, Hasanreisoglu M, Goldenberg-Cohen N, et al. Suppression of the oculocephalic reflex (doll's eyes phenomenon) in normal full-term babies. Current Eye Research 35(5). (2010)",
    authors: 'Snir M, Hasanreisoglu M, Goldenberg-Cohen N, et al.',
    title:
      "Suppression of the oculocephalic reflex (doll's eyes phenomenon) in normal full-term babies",
    container: 'Current Eye Research 35(5)',
    url: 'https://cris.tau.ac.il/en/publications/suppression-of-the-oculocephalic-reflex-dolls-eyes-phenomenon-in-',
    licence: 'not open',
    note: 'Abstract read. 325 healthy term babies aged 1-32 weeks, cross-sectional. Journal name from memory.',
  },
  'cupps-1976': {
    citation:
      'Cupps C, Plescia MG, Houser C. The Landau reaction: a clinical and electromyographic analysis. Developmental Medicine and Child Neurology 18(1):41-53. (1976)',
    authors: 'Cupps C, Plescia MG, Houser C',
    title: 'The Landau reaction: a clinical and electromyographic analysis',
    container: 'Developmental Medicine and Child Neurology 18(1):41-53',
    doi: '10.1111/j.1469-8749.1976.tb03604.x',
    url: 'https://doi.org/10.1111/j.1469-8749.1976.tb03604.x',
    licence: 'not open',
    note: 'Abstract read. 30 healthy infants (entered at 2, 5 or 8 months) over three months. Author list from memory.',
  },
  'kanda-1985': {
    citation:
      'Kanda T, Arii E, Yuge M, et al. A study on development of Landau reaction. No To Hattatsu 17(4):301-306. (1985)',
    authors: 'Kanda T, Arii E, Yuge M, et al.',
    title: 'A study on development of Landau reaction',
    container: 'No To Hattatsu 17(4):301-306',
    url: 'https://cir.nii.ac.jp/crid/1390282679530158848',
    licence: 'free to read',
    note: 'Abstract read. 100 infants referred before 13 weeks: 14 later cerebral palsy, 40 treated over 6 months, 46 normalised.',
  },
  'tachibana-1983': {
    citation:
      'Tachibana H. Rolling-over of the body and the righting reflexes acting on the head: their development in normal infants. No To Hattatsu 15(6):503-506. (1983)',
    authors: 'Tachibana H',
    title:
      'Rolling-over of the body and the righting reflexes acting on the head: their development in normal infants',
    container: 'No To Hattatsu 15(6):503-506',
    url: 'https://www.jstage.jst.go.jp/article/ojjscn1969/15/6/15_6_503/_article/-char/en',
    licence: 'free to read',
    note: 'Abstract read. 33 healthy infants monthly, 1-12 months; body tilted 30 degrees, eyes not occluded.',
  },
  'haley-1986': {
    citation:
      'Haley SM. Sequential analyses of postural reactions in nonhandicapped infants. Physical Therapy 66. (1986)',
    authors: 'Haley SM',
    title: 'Sequential analyses of postural reactions in nonhandicapped infants',
    container: 'Physical Therapy 66',
    licence: 'not open',
    note: 'Abstract read. 40 infants aged 2-10 months, cross-sectional; order of emergence, with a scalogram consistency index of 0.727. Gives an order and its variability, not ages.',
  },
  'jaffe-1994': {
    citation:
      'Jaffe M, Kugelman A, Tirosh E, Cohen A, Tal Y. Relationship between the parachute reactions and standing and walking in normal infants. Pediatric Neurology 11(1):38-40. (1994)',
    authors: 'Jaffe M, Kugelman A, Tirosh E, Cohen A, Tal Y',
    title:
      'Relationship between the parachute reactions and standing and walking in normal infants',
    container: 'Pediatric Neurology 11(1):38-40',
    doi: '10.1016/0887-8994(94)90087-6',
    url: 'https://pubmed.ncbi.nlm.nih.gov/7986290',
    licence: 'not open',
    note: 'Abstract read. 190 healthy infants followed prospectively.',
  },
  'romeo-2009': {
    citation:
      'Romeo DMM, Cioni M, Scoto M, Palermo F, Pizzardi A, Sorge A, Romeo MG. Development of the forward parachute reaction and the age of walking in near term infants: a longitudinal observational study. BMC Pediatrics 9:13. (2009)',
    authors: 'Romeo DMM, Cioni M, Scoto M, Palermo F, Pizzardi A, Sorge A, Romeo MG',
    title:
      'Development of the forward parachute reaction and the age of walking in near term infants: a longitudinal observational study',
    container: 'BMC Pediatrics 9:13',
    doi: '10.1186/1471-2431-9-13',
    pmcid: 'PMC2653025',
    url: 'https://doi.org/10.1186/1471-2431-9-13',
    licence: 'CC BY 2.0',
    note: 'Abstract read in four copies, with all authors. 484 healthy infants born at 35.0-36.9 weeks, corrected age 3, 6, 9, 12 months. The counts at each age are in the open full text, which was not reachable.',
  },
  'romeo-2011': {
    citation:
      'Romeo DM, et al. The forward parachute reaction and independent walking in infants with brain lesions. Developmental Medicine and Child Neurology 53(7):636-640. (2011)',
    authors: 'Romeo DM, et al.',
    title: 'The forward parachute reaction and independent walking in infants with brain lesions',
    container: 'Developmental Medicine and Child Neurology 53(7):636-640',
    doi: '10.1111/j.1469-8749.2011.03940.x',
    url: 'https://pubmed.ncbi.nlm.nih.gov/21418202',
    licence: 'free to read at publisher',
    note: 'Abstract read. 140 infants with lesions on cranial ultrasound, 86 of whom had cerebral palsy at follow-up.',
  },
  'forma-2019': {
    citation:
      'Forma V, Anderson DI, Provasi J, et al. What does prone skateboarding in the newborn tell us about the ontogeny of human locomotion? Child Development 90(4):1286-1302. (2019)',
    authors: 'Forma V, Anderson DI, Provasi J, et al.',
    title:
      'What does prone skateboarding in the newborn tell us about the ontogeny of human locomotion?',
    container: 'Child Development 90(4):1286-1302',
    doi: '10.1111/cdev.13251',
    url: 'https://pubmed.ncbi.nlm.nih.gov/31267516/',
    licence: 'not open',
    note: 'Abstract read. 60 two-day-old newborns.',
  },
  'hym-2023': {
    citation:
      'Hym C, Dumuids MV, Anderson DI, et al. Newborns modulate their crawling in response to their native language but not another language. Developmental Science 26(1):e13248. (2023)',
    authors: 'Hym C, Dumuids MV, Anderson DI, et al.',
    title:
      'Newborns modulate their crawling in response to their native language but not another language',
    container: 'Developmental Science 26(1):e13248',
    doi: '10.1111/desc.13248',
    url: 'https://doi.org/10.1111/desc.13248',
    licence: 'not open',
    note: 'Abstract read. 23 newborns.',
  },
  'thelen-1982': {
    citation:
      'Thelen E, Fisher DM, Ridley-Johnson R, Griffin NJ. Effects of body build and arousal on newborn infant stepping. Developmental Psychobiology 15:447-453. (1982)',
    authors: 'Thelen E, Fisher DM, Ridley-Johnson R, Griffin NJ',
    title: 'Effects of body build and arousal on newborn infant stepping',
    container: 'Developmental Psychobiology 15:447-453',
    url: 'https://scilit.com/publications/f159bb6d749f17263b68f7b96027529c',
    licence: 'not open',
    note: 'Abstract read. Authors and pages from memory.',
  },
  'wolthuis-2015': {
    citation:
      'Wolthuis-Stigter MI, Luinge MR, da Costa SP, Krijnen WP, van der Schans CP, Bos AF. The association between sucking behavior in preterm infants and neurodevelopmental outcomes at 2 years of age. Journal of Pediatrics 166:26-30. (2015)',
    authors: 'Wolthuis-Stigter MI, Luinge MR, da Costa SP, Krijnen WP, van der Schans CP, Bos AF',
    title:
      'The association between sucking behavior in preterm infants and neurodevelopmental outcomes at 2 years of age',
    container: 'Journal of Pediatrics 166:26-30',
    licence: 'not open',
    note: 'Abstract read. 52 preterm infants. Year, volume and pages from memory.',
  },
  'gieysztor-2018': {
    citation:
      'Gieysztor EZ, Choinska AM, Paprocka-Borowicz M. Persistence of primitive reflexes and associated motor problems in healthy preschool children. Archives of Medical Science 14(1):167-173. (2018)',
    authors: 'Gieysztor EZ, Choinska AM, Paprocka-Borowicz M',
    title:
      'Persistence of primitive reflexes and associated motor problems in healthy preschool children',
    container: 'Archives of Medical Science 14(1):167-173',
    doi: '10.5114/aoms.2016.60503',
    url: 'https://doi.org/10.5114/aoms.2016.60503',
    licence: 'open access (CC BY-NC-SA 4.0)',
    note: 'Abstract read. 35 children aged 4-6 years; graded residual activity, not the infant response.',
  },
  'pecuch-2021': {
    citation:
      'Pecuch A, Gieysztor E, Wolanska E, Telenga M, Paprocka-Borowicz M. Primitive reflex activity in relation to motor skills in healthy preschool children. Brain Sciences 11(8):967. (2021)',
    authors: 'Pecuch A, Gieysztor E, Wolanska E, Telenga M, Paprocka-Borowicz M',
    title: 'Primitive reflex activity in relation to motor skills in healthy preschool children',
    container: 'Brain Sciences 11(8):967',
    doi: '10.3390/brainsci11080967',
    pmcid: 'PMC8394673',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC8394673',
    licence: 'CC BY 4.0',
    note: 'Abstract read. 112 children aged 4-6 years; residual ATNR, STNR, TLR.',
  },
  'parmenter-1975': {
    citation:
      'Parmenter CL. The asymmetrical tonic neck reflex in normal first and third grade children. American Journal of Occupational Therapy 29. (1975)',
    authors: 'Parmenter CL',
    title: 'The asymmetrical tonic neck reflex in normal first and third grade children',
    container: 'American Journal of Occupational Therapy 29',
    licence: 'not open',
    note: 'Abstract read. 44 first-grade and 36 third-grade children on hands and knees.',
  },
  'futagi-2012': {
    citation:
      'Futagi Y, Toribe Y, Suzuki Y. The grasp reflex and Moro reflex in infants: hierarchy of primitive reflex responses. International Journal of Pediatrics 2012:191562. (2012)',
    authors: 'Futagi Y, Toribe Y, Suzuki Y',
    title: 'The grasp reflex and Moro reflex in infants: hierarchy of primitive reflex responses',
    container: 'International Journal of Pediatrics 2012:191562',
    doi: '10.1155/2012/191562',
    pmcid: 'PMC3384944',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC3384944',
    licence: 'CC BY 3.0',
    note: 'Abstract and introduction read. Disappearance figures from later sections are recalled and entered as separate memory rows.',
  },
  'futagi-2013': {
    citation:
      'Futagi Y, Yanagihara K, Mogami Y, Ikeda T, Suzuki Y. The Babkin reflex in infants: clinical significance and neural mechanism. Pediatric Neurology 49(3):149-155. (2013)',
    authors: 'Futagi Y, Yanagihara K, Mogami Y, Ikeda T, Suzuki Y',
    title: 'The Babkin reflex in infants: clinical significance and neural mechanism',
    container: 'Pediatric Neurology 49(3):149-155',
    doi: '10.1016/j.pediatrneurol.2013.04.005',
    url: 'https://doi.org/10.1016/j.pediatrneurol.2013.04.005',
    licence: 'not open',
    note: 'Abstract read. Co-author list from memory.',
  },
  'zafeiriou-2004': {
    citation:
      'Zafeiriou DI. Primitive reflexes and postural reactions in the neurodevelopmental examination. Pediatric Neurology 31(1):1-8. (2004)',
    authors: 'Zafeiriou DI',
    title: 'Primitive reflexes and postural reactions in the neurodevelopmental examination',
    container: 'Pediatric Neurology 31(1):1-8',
    doi: '10.1016/j.pediatrneurol.2004.01.012',
    licence: 'not open',
    note: "Abstract read. Ages at disappearance for palmar grasp, plantar grasp, Galant and ATNR read in a neurosurgeon's study notes that repeat the review's table without naming it; the Moro and crossed extension rows are from memory, as is the DOI.",
  },
  'statpearls-moro': {
    citation:
      'Edwards CW, Al Khalili Y. Moro reflex. StatPearls (NCBI Bookshelf NBK542173). (2023)',
    authors: 'Edwards CW, Al Khalili Y',
    title: 'Moro reflex',
    container: 'StatPearls (NCBI Bookshelf NBK542173)',
    url: 'https://www.ncbi.nlm.nih.gov/books/NBK542173/',
    licence: 'CC BY-NC-ND 4.0',
    note: 'Chapter passage read with its reference numbers in a copy.',
  },
  'dreeben-2008': {
    citation:
      'Dreeben-Irimia O. Physical therapy clinical handbook for PTAs, pp. 421-424. Jones and Bartlett. (2008)',
    authors: 'Dreeben-Irimia O',
    title: 'Physical therapy clinical handbook for PTAs, pp. 421-424',
    container: 'Jones and Bartlett',
    licence: 'not open',
    note: 'Figures read in student notes that cite the book page by page (2013), not checked against the book; year from memory.',
  },
  'molnar-handout': {
    citation:
      'Molnar GE, Alexander MA (eds). Pediatric rehabilitation, reflex table. Hanley and Belfus. (1999)',
    authors: 'Molnar GE, Alexander MA (eds)',
    title: 'Pediatric rehabilitation, reflex table',
    container: 'Hanley and Belfus',
    licence: 'not open',
    note: 'Figures read in a course printout that labels integration ages by textbook; its onset column is shared by the two books. Edition from memory.',
  },
  'osullivan-handout': {
    citation: "O'Sullivan SB, Schmitz TJ (eds). Physical rehabilitation, reflex table. F.A. Davis",
    authors: "O'Sullivan SB, Schmitz TJ (eds)",
    title: 'Physical rehabilitation, reflex table',
    container: 'F.A. Davis',
    licence: 'not open',
    note: 'Figures read in a course printout (column marked Sullivan) and in two course presentations that repeat the same table; righting, protective and tilting rows are from memory where marked. Edition not shown.',
  },
  'fiorentino-1963': {
    citation:
      'Fiorentino MR. Reflex testing methods for evaluating CNS development. Charles C Thomas (1963; 2nd ed. 1981). (1963)',
    authors: 'Fiorentino MR',
    title: 'Reflex testing methods for evaluating CNS development',
    container: 'Charles C Thomas (1963; 2nd ed. 1981)',
    licence: 'not open',
    note: 'Spinal-level table read in a transcription. Ages for higher levels are from memory, marked row by row.',
  },
  'vangijn-1977': {
    citation:
      'van Gijn J. The plantar reflex: a historical, clinical and electromyographic study (thesis), pp. 43-46. Erasmus University Rotterdam repository. (1977)',
    authors: 'van Gijn J',
    title:
      'The plantar reflex: a historical, clinical and electromyographic study (thesis), pp. 43-46',
    container: 'Erasmus University Rotterdam repository',
    licence: 'free to read in the university repository',
    note: 'Two pages read. Explains why reported newborn plantar responses conflict. Author and year from memory of the thesis.',
  },
  nelson: {
    citation:
      'Kliegman RM, et al. (eds). Nelson textbook of pediatrics, table of timing of selected primitive reflexes. Elsevier',
    authors: 'Kliegman RM, et al. (eds)',
    title: 'Nelson textbook of pediatrics, table of timing of selected primitive reflexes',
    container: 'Elsevier',
    licence: 'not open',
    note: 'Recalled, not seen.',
  },
  bates: {
    citation:
      "Bickley LS. Bates' guide to physical examination and history taking, primitive reflex table. Wolters Kluwer",
    authors: 'Bickley LS',
    title: "Bates' guide to physical examination and history taking, primitive reflex table",
    container: 'Wolters Kluwer',
    licence: 'not open',
    note: 'The table is recalled, not seen. The passage on testing sensation without a pin was read in a copy of the book’s text on a website.',
  },
  'common-practice': {
    citation: 'Common practice in course tables, no single source; from memory',
    title: 'Common practice in course tables',
    licence: 'not applicable',
    note: 'Composite of what is commonly taught. No single published source. Lowest weight.',
  },
  'milani-1967': {
    citation:
      'Milani-Comparetti A, Gidoni EA. Routine developmental examination in normal and retarded children. Developmental Medicine and Child Neurology 9:631-638. (1967)',
    authors: 'Milani-Comparetti A, Gidoni EA',
    title: 'Routine developmental examination in normal and retarded children',
    container: 'Developmental Medicine and Child Neurology 9:631-638',
    licence: 'not open',
    note: 'Recalled from the published chart, not seen.',
  },
  volpe: {
    citation: 'Volpe JJ. Neurology of the newborn, neurological examination chapter. Elsevier',
    authors: 'Volpe JJ',
    title: 'Neurology of the newborn, neurological examination chapter',
    container: 'Elsevier',
    licence: 'not open',
    note: 'Recalled, not seen.',
  },
  'devries-1982': {
    citation:
      'de Vries JIP, Visser GHA, Prechtl HFR. The emergence of fetal behaviour. I. Qualitative aspects. Early Human Development 7:301-322. (1982)',
    authors: 'de Vries JIP, Visser GHA, Prechtl HFR',
    title: 'The emergence of fetal behaviour. I. Qualitative aspects',
    container: 'Early Human Development 7:301-322',
    licence: 'not open',
    note: 'Recalled, not seen.',
  },
  beststart: {
    citation:
      'Best Start Resource Centre, Ontario. On Track: supporting healthy child development, infant section, reflex table (after Berk 2008). public web guide',
    authors: 'Best Start Resource Centre, Ontario',
    title:
      'On Track: supporting healthy child development, infant section, reflex table (after Berk 2008)',
    container: 'public web guide',
    url: 'https://beststart.org/OnTrack_English/3-infant.html',
    licence: 'not stated',
    note: 'Read. Public-health guide; the table itself credits a psychology textbook.',
  },
  'adam-babinski': {
    citation:
      'A.D.A.M. Medical Encyclopedia (used by MedlinePlus). Babinski reflex, entry 003294. medical encyclopaedia. (2013)',
    authors: 'A.D.A.M. Medical Encyclopedia (used by MedlinePlus)',
    title: 'Babinski reflex, entry 003294',
    container: 'medical encyclopaedia',
    url: 'https://medlineplus.gov/ency/article/003294.htm',
    licence: 'copyright A.D.A.M.; facts only used',
    note: 'Entry read in a copy reviewed 2013.',
  },
  cincinnati: {
    citation: "Cincinnati Children's Hospital. Newborn reflexes. hospital patient page",
    authors: "Cincinnati Children's Hospital",
    title: 'Newborn reflexes',
    container: 'hospital patient page',
    url: 'https://www.cincinnatichildrens.org/health/r/newborn-reflexes',
    licence: 'not open',
    note: 'Read.',
  },
  'hpo-neck': {
    citation:
      'Human Phenotype Ontology. Impaired neck-righting reflex, HP:0033330 (cites PMID 13502822). ontology entry',
    authors: 'Human Phenotype Ontology',
    title: 'Impaired neck-righting reflex, HP:0033330 (cites PMID 13502822)',
    container: 'ontology entry',
    url: 'https://hpo.jax.org/browse/term/HP:0033330',
    licence: 'HPO licence (free with attribution)',
    note: 'Read.',
  },
  'wikipedia-landau': {
    citation: 'Wikipedia contributors. Landau reflex. Wikipedia',
    authors: 'Wikipedia contributors',
    title: 'Landau reflex',
    container: 'Wikipedia',
    url: 'https://en.wikipedia.org/wiki/Landau_reflex',
    licence: 'CC BY-SA',
    note: 'Read.',
  },
  'physiopedia-tlr': {
    citation: 'Physiopedia contributors. Tonic labyrinthine reflex. Physiopedia',
    authors: 'Physiopedia contributors',
    title: 'Tonic labyrinthine reflex',
    container: 'Physiopedia',
    url: 'https://www.physio-pedia.com/Tonic_labyrinthine_reflex',
    licence: 'site licence; facts only used',
    note: 'Read; marked by the site as unfinished. Credits Capute et al. for its figures.',
  },
  'stedman-startle': {
    citation:
      'Wolters Kluwer medical dictionary. Startle reflex. dictionary entry, reviewed 2016. (2016)',
    authors: 'Wolters Kluwer medical dictionary',
    title: 'Startle reflex',
    container: 'dictionary entry, reviewed 2016',
    url: 'https://www.drugs.com/dict/startle-reflex.html',
    licence: 'not open',
    note: 'Read. Treats startle and Moro as synonyms.',
  },
  'lancaster-glossary': {
    citation:
      'Lancaster University, Department of Psychology. Developmental glossary, stepping entry. university glossary',
    authors: 'Lancaster University, Department of Psychology',
    title: 'Developmental glossary, stepping entry',
    container: 'university glossary',
    url: 'https://lancaster.ac.uk/fas/psych/glossary/?p=9157',
    licence: 'not stated',
    note: 'Read.',
  },
  'gpnotebook-atnr': {
    citation: 'GPnotebook. Tonic neck reflex (asymmetrical). online medical reference. (2018)',
    authors: 'GPnotebook',
    title: 'Tonic neck reflex (asymmetrical)',
    container: 'online medical reference',
    url: 'https://gpnotebook.com',
    licence: 'not open',
    note: 'Read.',
  },
  drhull: {
    citation: 'Hull (paediatrician). Reflexes, primitive. paediatric encyclopaedia page',
    authors: 'Hull (paediatrician)',
    title: 'Reflexes, primitive',
    container: 'paediatric encyclopaedia page',
    url: 'http://www.drhull.com/EncyMaster/R/reflexes_primitive.html',
    licence: 'not open',
    note: 'Read.',
  },
  'kumc-2012': {
    citation:
      'University of Kansas Medical Center, paediatric physical therapy class of 2012. Developmental milestones and primitive reflexes. class wiki. (2012)',
    authors: 'University of Kansas Medical Center, paediatric physical therapy class of 2012',
    title: 'Developmental milestones and primitive reflexes',
    container: 'class wiki',
    url: 'https://kumcpedpt2012.wikispaces.com/Developmental+milestones+%26+primitive+reflexes',
    licence: 'not stated',
    note: 'Read. Row headings were missing; rows were matched by stimulus and response. States weeks as PMA.',
  },
  'obaidat-2023': {
    citation:
      'Obaidat S. Infant reflexes and developmental milestones (chapter 8 lecture). university lecture slides. (2023)',
    authors: 'Obaidat S',
    title: 'Infant reflexes and developmental milestones (chapter 8 lecture)',
    container: 'university lecture slides, chapter 8',
    url: 'https://www.scribd.com/document/635650211/Chapter-8-Infant-Reflexes-and-Developmental-Milestones-SC',
    licence: 'not open',
    note: 'First slides read. States that PMA is used in the sense of gestational age.',
  },
  'pediatriceducation-2020': {
    citation:
      "D'Alessandro DM. What are examples of infantile primitive reflexes? PediatricEducation.org, 29 June 2020. (2020)",
    authors: "D'Alessandro DM",
    title: 'What are examples of infantile primitive reflexes?',
    container: 'PediatricEducation.org, 29 June 2020',
    url: 'https://pediatriceducation.org/2020/06/29/what-are-examples-of-infantile-primitive-reflexes/',
    licence: 'not open',
    note: 'Opening and summary read. University-run teaching site; author from memory.',
  },
  'statpearls-rooting': {
    citation: 'Yoo H, Mihaila DM. Rooting reflex. StatPearls. (2022)',
    authors: 'Yoo H, Mihaila DM',
    title: 'Rooting reflex',
    container: 'StatPearls',
    url: 'https://www.statpearls.com/ArticleLibrary/viewarticle/28640',
    licence: 'CC BY-NC-ND 4.0',
    note: 'Introduction read. Authors and year from memory. Also says breathing-swallow coordination starts to develop at about 37 weeks.',
  },
  'nyqvist-1999': {
    citation:
      "Nyqvist KH, Sjoden PO, Ewald U. The development of preterm infants' breastfeeding behavior. Early Human Development 55(3):247-264. (1999)",
    authors: 'Nyqvist KH, Sjoden PO, Ewald U',
    title: "The development of preterm infants' breastfeeding behavior",
    container: 'Early Human Development 55(3):247-264',
    doi: '10.1016/s0378-3782(99)00025-0',
    url: 'https://doi.org/10.1016/s0378-3782(99)00025-0',
    licence: 'not open',
    note: 'Abstract read. 71 singletons born at 26.7-35.9 weeks; 4321 records made by mothers. Co-authors from memory.',
  },
  'mizuno-2003': {
    citation:
      'Mizuno K, Ueda A. The maturation and coordination of sucking, swallowing, and respiration in preterm infants. Journal of Pediatrics 142(1):36-40. (2003)',
    authors: 'Mizuno K, Ueda A',
    title:
      'The maturation and coordination of sucking, swallowing, and respiration in preterm infants',
    container: 'Journal of Pediatrics 142(1):36-40',
    doi: '10.1067/mpd.2003.mpd0312',
    url: 'https://doi.org/10.1067/mpd.2003.mpd0312',
    licence: 'not open',
    note: 'Abstract read. 24 infants born at 28-31 weeks, weekly at 32-36 weeks. Printed as weeks postconception, taken as PMA. Co-author from memory.',
  },
  'gewolb-2001': {
    citation:
      'Gewolb IH, Vice FL, Schwietzer-Kenney EL, Taciak VL, Bosma JF. Developmental patterns of rhythmic suck and swallow in preterm infants. Developmental Medicine and Child Neurology 43(1):22-27. (2001)',
    authors: 'Gewolb IH, Vice FL, Schwietzer-Kenney EL, Taciak VL, Bosma JF',
    title: 'Developmental patterns of rhythmic suck and swallow in preterm infants',
    container: 'Developmental Medicine and Child Neurology 43(1):22-27',
    licence: 'not open',
    note: 'Abstract read. 20 healthy preterm infants, weekly from first bottle feed, 32.1-39.6 weeks PMA. Journal and pages from memory.',
  },
  'andrews-1994': {
    citation:
      'Andrews K, Fitzgerald M. The cutaneous withdrawal reflex in human neonates: sensitization, receptive fields, and the effects of contralateral stimulation. Pain 56(1):95-101. (1994)',
    authors: 'Andrews K, Fitzgerald M',
    title:
      'The cutaneous withdrawal reflex in human neonates: sensitization, receptive fields, and the effects of contralateral stimulation',
    container: 'Pain 56(1):95-101',
    doi: '10.1016/0304-3959(94)90154-6',
    url: 'https://doi.org/10.1016/0304-3959(94)90154-6',
    licence: 'not open',
    note: 'Abstract read. 50 infants, 27.5-42.5 weeks postconceptional age, calibrated hairs on foot and leg. Authors from memory.',
  },
  'martakis-2017': {
    citation:
      'Martakis K, Hunseler C, Herkenrath P, Thangavelu K, Kribs A, Roth B. The flexion withdrawal reflex increases in premature infants at 22-26 weeks of gestation due to changes in spinal cord excitability. Acta Paediatrica 106(7):1079-1084. (2017)',
    authors: 'Martakis K, Hunseler C, Herkenrath P, Thangavelu K, Kribs A, Roth B',
    title:
      'The flexion withdrawal reflex increases in premature infants at 22-26 weeks of gestation due to changes in spinal cord excitability',
    container: 'Acta Paediatrica 106(7):1079-1084',
    doi: '10.1111/apa.13854',
    pmcid: 'PMC5488190',
    url: 'https://doi.org/10.1111/apa.13854',
    licence: 'free to read; check the licence',
    note: 'Abstract read. 19 infants born at 22-26 weeks, five examinations from the first 72 hours to 37-40 weeks.',
  },
  'shahidullah-1993': {
    citation:
      'Shahidullah S, Hepper PG. The developmental origins of fetal responsiveness to an acoustic stimulus. Journal of Reproductive and Infant Psychology 11(3):135-142. (1993)',
    authors: 'Shahidullah S, Hepper PG',
    title: 'The developmental origins of fetal responsiveness to an acoustic stimulus',
    container: 'Journal of Reproductive and Infant Psychology 11(3):135-142',
    doi: '10.1080/02646839308403208',
    url: 'https://doi.org/10.1080/02646839308403208',
    licence: 'not open',
    note: 'Abstract read. Fetuses at 15-25 weeks. Authors and journal from memory.',
  },
  'kisilevsky-2000': {
    citation:
      'Kisilevsky BS, Pang L, Hains SMJ. Maturation of human fetal responses to airborne sound in low- and high-risk fetuses. Early Human Development 58(3):179-195. (2000)',
    authors: 'Kisilevsky BS, Pang L, Hains SMJ',
    title: 'Maturation of human fetal responses to airborne sound in low- and high-risk fetuses',
    container: 'Early Human Development 58(3):179-195',
    doi: '10.1016/s0378-3782(00)00075-x',
    url: 'https://doi.org/10.1016/s0378-3782(00)00075-x',
    licence: 'not open',
    note: 'Abstract read. 91 low-risk fetuses at 27, 30, 33 and 36 weeks. Authors from memory.',
  },
  'bellieni-2005': {
    citation:
      'Bellieni CV, Severi F, Bocchi C, Caparelli N, Bagnoli F, Buonocore G, Petraglia F. Blink-startle reflex habituation in 30-34-week low-risk fetuses. Journal of Perinatal Medicine 33(1). (2005)',
    authors: 'Bellieni CV, Severi F, Bocchi C, Caparelli N, Bagnoli F, Buonocore G, Petraglia F',
    title: 'Blink-startle reflex habituation in 30-34-week low-risk fetuses',
    container: 'Journal of Perinatal Medicine 33(1)',
    doi: '10.1515/JPM.2005.005',
    url: 'https://doi.org/10.1515/JPM.2005.005',
    licence: 'not open',
    note: 'Abstract read. 22 fetuses, eye tightening on ultrasound.',
  },
  'shapiro-1981': {
    citation:
      'Shapiro BK, Palmer FB, Wachtel RC, Accardo P, Ross A, Capute AJ, Batshaw ML. The asymmetrical tonic neck reflex (ATNR): infant indicator of later development. Pediatric Research 15 (conference abstract 1610). (1981)',
    authors: 'Shapiro BK, Palmer FB, Wachtel RC, Accardo P, Ross A, Capute AJ, Batshaw ML',
    title: 'The asymmetrical tonic neck reflex (ATNR): infant indicator of later development',
    container: 'Pediatric Research 15 (conference abstract 1610)',
    doi: '10.1203/00006450-198104001-01627',
    url: 'https://doi.org/10.1203/00006450-198104001-01627',
    licence: 'free to read; not stated as open licence',
    note: 'Conference abstract read. 249 infants seen at 2, 4, 6, 9 and 12 months, scored absent or present; shares printed for 2, 6 and 12 months.',
  },
  'kranen-1997': {
    citation:
      'van Kranen-Mastenbroek VHJM, et al. The influence of head position and head position change on spontaneous body posture and motility in full-term AGA and SGA newborn infants. Brain and Development 19(2):104-110. (1997)',
    authors: 'van Kranen-Mastenbroek VHJM, et al.',
    title:
      'The influence of head position and head position change on spontaneous body posture and motility in full-term AGA and SGA newborn infants',
    container: 'Brain and Development 19(2):104-110',
    licence: 'not open',
    note: 'Abstract read. 15 term newborns of appropriate and 15 of low weight for age, filmed three hours on day 3-8.',
  },
  'forslund-1983': {
    citation:
      'Forslund M, Bjerre I. Neurological assessment of preterm infants at term conceptional age in comparison with normal full-term infants. Early Human Development 8(3-4):195-208. (1983)',
    authors: 'Forslund M, Bjerre I',
    title:
      'Neurological assessment of preterm infants at term conceptional age in comparison with normal full-term infants',
    container: 'Early Human Development 8(3-4):195-208',
    doi: '10.1016/0378-3782(83)90002-6',
    url: 'https://pubmed.ncbi.nlm.nih.gov/6641565',
    licence: 'not open',
    note: 'Abstract read. 40 infants born before 35 weeks, examined at term age, and 26 term newborns. Authors from memory.',
  },
  'majnemer-1992': {
    citation:
      'Majnemer A, Brownstein A, Kadanoff R, Shevell MI. A comparison of neurobehavioral performance of healthy term and low-risk preterm infants at term. Developmental Medicine and Child Neurology 34(5):417-424. (1992)',
    authors: 'Majnemer A, Brownstein A, Kadanoff R, Shevell MI',
    title:
      'A comparison of neurobehavioral performance of healthy term and low-risk preterm infants at term',
    container: 'Developmental Medicine and Child Neurology 34(5):417-424',
    doi: '10.1111/j.1469-8749.1992.tb11454.x',
    url: 'https://pubmed.ncbi.nlm.nih.gov/1592194',
    licence: 'not open',
    note: 'Abstract read. Authors from memory.',
  },
  'palmer-1982': {
    citation:
      'Palmer PG, Dubowitz LMS, Verghote M, Dubowitz V. Neurological and neurobehavioural differences between preterm infants at term and full-term newborn infants. Neuropediatrics 13(4):183-189. (1982)',
    authors: 'Palmer PG, Dubowitz LMS, Verghote M, Dubowitz V',
    title:
      'Neurological and neurobehavioural differences between preterm infants at term and full-term newborn infants',
    container: 'Neuropediatrics 13(4):183-189',
    doi: '10.1055/s-2008-1059620',
    url: 'https://pubmed.ncbi.nlm.nih.gov/7155301',
    licence: 'not open',
    note: 'Abstract read. 80 infants born at 27-35 weeks, seen again at 40 weeks PMA, and 40 term newborns on days 1 and 5. Authors from memory.',
  },
  'bartlett-1997': {
    citation:
      'Bartlett D. Primitive reflexes and early motor development. Journal of Developmental and Behavioral Pediatrics, June 1997. (1997)',
    authors: 'Bartlett D',
    title: 'Primitive reflexes and early motor development',
    container: 'Journal of Developmental and Behavioral Pediatrics, June 1997',
    licence: 'not open',
    note: 'Abstract read. 156 term infants with normal outcome at 18 months, seen at 6 weeks, 3 and 5 months. Author from memory.',
  },
  'futagi-1992': {
    citation:
      'Futagi Y, et al. Primitive reflex profiles in infants: differences based on categories of neurological abnormality. Brain and Development 14(5):294-298. (1992)',
    authors: 'Futagi Y, et al.',
    title:
      'Primitive reflex profiles in infants: differences based on categories of neurological abnormality',
    container: 'Brain and Development 14(5):294-298',
    url: 'https://pubmed.ncbi.nlm.nih.gov/1456382',
    licence: 'not open',
    note: 'Abstract read. 458 typical infants, 78 with cerebral palsy, 81 with intellectual disability. First author from memory.',
  },
  'okamoto-2001': {
    citation:
      'Okamoto T, Okamoto Y, Andrew PD. Electromyographic study of newborn stepping in neonates and young infants. Electromyography and Clinical Neurophysiology 41(5):289-296. (2001)',
    authors: 'Okamoto T, Okamoto Y, Andrew PD',
    title: 'Electromyographic study of newborn stepping in neonates and young infants',
    container: 'Electromyography and Clinical Neurophysiology 41(5):289-296',
    licence: 'not open',
    note: 'Abstract read. Ten healthy infants over the first four months, muscle recordings. Authors, journal and year from memory.',
  },
  'widstrom-2011': {
    citation:
      'Widstrom AM, Lilja G, Aaltomaa-Michalias P, Dahllof A, Lintula M, Nissen E. Newborn behaviour to locate the breast when skin-to-skin: a possible method for enabling early self-regulation. Acta Paediatrica 100(1):79-85. (2011)',
    authors: 'Widstrom AM, Lilja G, Aaltomaa-Michalias P, Dahllof A, Lintula M, Nissen E',
    title:
      'Newborn behaviour to locate the breast when skin-to-skin: a possible method for enabling early self-regulation',
    container: 'Acta Paediatrica 100(1):79-85',
    doi: '10.1111/j.1651-2227.2010.01983.x',
    url: 'https://doi.org/10.1111/j.1651-2227.2010.01983.x',
    licence: 'not open',
    note: 'Abstract read. 28 term infants filmed from birth. Volume and pages from memory.',
  },
  'hedberg-2005': {
    citation:
      'Hedberg A, Carlberg EB, Forssberg H, Hadders-Algra M. Development of postural adjustments in sitting position during the first half year of life. Developmental Medicine and Child Neurology 47(5):312-320. (2005)',
    authors: 'Hedberg A, Carlberg EB, Forssberg H, Hadders-Algra M',
    title:
      'Development of postural adjustments in sitting position during the first half year of life',
    container: 'Developmental Medicine and Child Neurology 47(5):312-320',
    doi: '10.1111/j.1469-8749.2005.tb01142.x',
    url: 'https://doi.org/10.1111/j.1469-8749.2005.tb01142.x',
    licence: 'not open',
    note: 'Abstract read. 40 healthy term infants, eight each at 1, 2, 3, 4 and 5 months; muscle recordings while the seat moved.',
  },
  'hadders-algra-2005': {
    citation:
      'Hadders-Algra M. Development of postural control during the first 18 months of life. Neural Plasticity 12(2-3). (2005)',
    authors: 'Hadders-Algra M',
    title: 'Development of postural control during the first 18 months of life',
    container: 'Neural Plasticity 12(2-3)',
    licence: 'open access journal; check the article page',
    note: 'Abstract read. Muscle-recording studies of balance adjustments; transitions at 3, 6, 9-10 and 13-14 months.',
  },
  'roncesvalles-2000': {
    citation:
      'Roncesvalles MNC, Woollacott MH, Jensen JL. The development of compensatory stepping skills in children. Journal of Motor Behavior 32(1):100-111. (2000)',
    authors: 'Roncesvalles MNC, Woollacott MH, Jensen JL',
    title: 'The development of compensatory stepping skills in children',
    container: 'Journal of Motor Behavior 32(1):100-111',
    doi: '10.1080/00222890009601363',
    url: 'https://doi.org/10.1080/00222890009601363',
    licence: 'not open',
    note: 'Abstract read. 25 children aged 9-19 months in four groups by walking experience; moving platform.',
  },
  'gpnotebook-crossed': {
    citation:
      'GPnotebook. Crossed extension reflex (foot reflex). online medical reference. (2018)',
    authors: 'GPnotebook',
    title: 'Crossed extension reflex (foot reflex)',
    container: 'online medical reference',
    url: 'https://gpnotebook.com',
    licence: 'not open',
    note: 'Read.',
  },
  'wikipedia-stnr': {
    citation:
      'Wikipedia contributors. Symmetrical tonic neck reflex. Wikipedia (2019 copy). (2019)',
    authors: 'Wikipedia contributors',
    title: 'Symmetrical tonic neck reflex',
    container: 'Wikipedia (2019 copy)',
    url: 'https://en.wikipedia.org/wiki/Symmetrical_tonic_neck_reflex',
    licence: 'CC BY-SA',
    note: 'Read. Gives two end ages: 9-10 months, and significantly diminished by 2-3 years.',
  },
  'wikipedia-palmar': {
    citation: 'Wikipedia contributors. Palmar grasp reflex. Wikipedia',
    authors: 'Wikipedia contributors',
    title: 'Palmar grasp reflex',
    container: 'Wikipedia',
    url: 'https://en.wikipedia.org/wiki/Palmar_grasp_reflex',
    licence: 'CC BY-SA',
    note: 'Read.',
  },
  'wikipedia-es-stepping': {
    citation: 'Wikipedia contributors (Spanish). Reflejo de marcha automatica. Wikipedia',
    authors: 'Wikipedia contributors (Spanish)',
    title: 'Reflejo de marcha automatica',
    container: 'Wikipedia',
    url: 'https://es.wikipedia.org/wiki/Reflejo_de_marcha_autom%C3%A1tica',
    licence: 'CC BY-SA',
    note: 'Read. An older version of the same article puts the end at the fourth to sixth month.',
  },
  'wikimd-galant': {
    citation: 'WikiMD contributors. Galant reflex. WikiMD open encyclopaedia',
    authors: 'WikiMD contributors',
    title: 'Galant reflex',
    container: 'WikiMD open encyclopaedia',
    url: 'https://wikimd.org/wiki/Galant_reflex',
    licence: 'CC BY-SA; check the page',
    note: 'Read.',
  },
  'wikimd-tlr': {
    citation: 'WikiMD contributors. Tonic labyrinthine reflex. WikiMD open encyclopaedia',
    authors: 'WikiMD contributors',
    title: 'Tonic labyrinthine reflex',
    container: 'WikiMD open encyclopaedia',
    url: 'https://wikimd.com/wiki/Tonic_labyrinthine_reflex',
    licence: 'CC BY-SA; check the page',
    note: 'Read. Head forward: from birth, starts to integrate about 4 months. Head backward: appears a little later, integrates by 6.',
  },
  'dict-parachute': {
    citation:
      'Medical dictionary. Parachute reflex. McGraw-Hill Concise Dictionary of Modern Medicine',
    authors: 'Medical dictionary',
    title: 'Parachute reflex',
    container: 'McGraw-Hill Concise Dictionary of Modern Medicine',
    licence: 'not open',
    note: 'Entry read. Dictionary name from memory.',
  },
  'peel-health': {
    citation:
      'Region of Peel, Public Health (Ontario). Caring for your newborn baby: reflexes and other newborn behaviours. public health web page',
    authors: 'Region of Peel, Public Health (Ontario)',
    title: 'Caring for your newborn baby: reflexes and other newborn behaviours',
    container: 'public health web page',
    url: 'https://www.peelregion.ca/health/family-health/newborn-care/look-like/reflexes.htm',
    licence: 'not stated',
    note: 'First rows of the table read.',
  },
  'japan-exam-2020': {
    citation:
      'National examination for childcare workers, Japan. Child health, question 7, second session of 2020, with the answer key. national examination paper. (2020)',
    authors: 'National examination for childcare workers, Japan',
    title: 'Child health, question 7, second session of 2020, with the answer key',
    container: 'national examination paper',
    licence: 'facts only used',
    note: 'Question and key read in a copy. Pairs the key treats as correct; it rejects 12 months for the end of sucking.',
  },
  'medicmedia-qb': {
    citation:
      'Medic Media. Question Bank for the physiotherapy and occupational therapy national examination (Japanese), commentary on early motor development. Medic Media',
    authors: 'Medic Media',
    title:
      'Question Bank for the physiotherapy and occupational therapy national examination (Japanese), commentary on early motor development',
    container: 'Medic Media',
    licence: 'not open',
    note: 'Commentary read. Edition not shown. Counts the first phase of the Landau response as gone by 6 weeks.',
  },
  'sadurni-2008': {
    citation:
      'Sadurni M, Rostan C, Serrat E. El desarrollo de los ninos, paso a paso, pp. 48-49. Editorial UOC. (2008)',
    authors: 'Sadurni M, Rostan C, Serrat E',
    title: 'El desarrollo de los ninos, paso a paso, pp. 48-49',
    container: 'Editorial UOC',
    licence: 'not open',
    note: 'Pages read. Authors, publisher and year from memory. Newborn reflexes, so the start is birth by context.',
  },
  'garcia-sanchez': {
    citation:
      'Garcia Sanchez FA (tables, as reproduced). Primeras habilidades motoras del neonato: los reflejos, parte II. Espacio Logopedico, professional web journal, article 2742',
    authors: 'Garcia Sanchez FA (tables, as reproduced)',
    title: 'Primeras habilidades motoras del neonato: los reflejos, parte II',
    container: 'Espacio Logopedico, professional web journal, article 2742',
    url: 'https://espaciologopedico.com/revista/articulo/2742/primeras-habilidades-motoras-del-neonato-los-reflejos-parte-ii.html',
    licence: 'not stated',
    note: 'First part of the tables read; some cells were cut short.',
  },
  'payne-isaacs': {
    citation:
      'Payne VG, Isaacs LD. Human motor development: a lifespan approach, chapter Infant reflexes and stereotypies. Routledge',
    authors: 'Payne VG, Isaacs LD',
    title: 'Human motor development: a lifespan approach, chapter Infant reflexes and stereotypies',
    container: 'Routledge',
    licence: 'not open',
    note: 'Chapter summary read. Book title and edition from memory.',
  },
  'lally-valentine': {
    citation:
      'Lally M, Valentine-French S. Lifespan development: a psychological perspective, infant reflexes. College of Lake County Foundation (open textbook)',
    authors: 'Lally M, Valentine-French S',
    title: 'Lifespan development: a psychological perspective, infant reflexes',
    container: 'College of Lake County Foundation (open textbook)',
    url: 'https://courses.lumenlearning.com/suny-lifespandevelopment/',
    licence: 'CC BY-NC-SA',
    note: 'Passage read. Lists reflexes that stay: eye blink, swallowing, sneezing, gagging, withdrawal.',
  },
  'saint-anne-dargassies': {
    citation:
      'Saint-Anne Dargassies S. Work on the crossed extension reflex, as described in Italian course pages on neuro-psychomotor therapy. cited second-hand',
    authors: 'Saint-Anne Dargassies S',
    title:
      'Work on the crossed extension reflex, as described in Italian course pages on neuro-psychomotor therapy',
    container: 'cited second-hand',
    licence: 'not stated',
    note: 'Read second-hand: the course page credits her with the four stages and the dating of the third.',
  },
  'ubc-kin355': {
    citation:
      'University of British Columbia, KIN 355 class of 2020. Stepping reflex. course wiki. (2020)',
    authors: 'University of British Columbia, KIN 355 class of 2020',
    title: 'Stepping reflex',
    container: 'course wiki',
    url: 'https://wiki.ubc.ca/Course:KIN355/2020_Projects/Stepping_Reflex',
    licence: 'check the page',
    note: 'Read. Credits Gabbard, Lifelong motor development (2018), for its ages.',
  },
  'brown-medpeds': {
    citation:
      'Brown University medicine-pediatrics residency. Developmental reflexes: a disappearing act. residency teaching page',
    authors: 'Brown University medicine-pediatrics residency',
    title: 'Developmental reflexes: a disappearing act',
    container: 'residency teaching page',
    url: 'https://brownmedpedsresidency.org/developmental-reflexes-a-disappearing-act/',
    licence: 'not stated',
    note: 'Text read; its table was not. Credits Gerber RJ, Wilks T, Erdie-Lalena C, Pediatrics in Review 31:267-277 (2010).',
  },
  'who-2006': {
    citation:
      'WHO Multicentre Growth Reference Study Group. WHO Motor Development Study: windows of achievement for six gross motor development milestones. Acta Paediatr Suppl 2006;450:86-95. doi:10.1111/j.1651-2227.2006.tb02379.x',
    note: 'Seen: abstract.',
  },
  'toe-1948': {
    citation:
      'Toe reflexes in infancy and the development of voluntary control. Am J Dis Child 1948;76(4):389-400. doi:10.1001/archpedi.1948.02030030401004',
    note: 'Seen: abstract.',
  },
  'clinic-2015': {
    citation: 'US paediatric therapy clinic page A (Nov 2015): protective extension table',
    note: 'Seen: full text.',
  },
  'clinic-2021': {
    citation: 'US paediatric therapy clinic page B (Mar 2021): protective reflex ages',
    note: 'Seen: full text.',
  },
  'health-explainer': {
    citation: 'Health explainer page: parachute reaction ages',
    note: 'Seen: full text.',
  },
  'aap-2004': {
    citation:
      'American Academy of Pediatrics, Committee on Fetus and Newborn. Age terminology during the perinatal period. Pediatrics 2004;114(5):1362-1364. Reaffirmation notices 2009 and 2011 (Pediatrics 123(1):188; 123(5):1421; 127(5):e1367)',
    note: 'Seen: definition table + opening text + reaffirmation notices; worked-example paragraphs not in any stored passage.',
  },
  'pediatrics-2024': {
    citation: 'The prematurity paradox. Pediatrics 2024;153(2):e2023063801',
    note: 'Seen: abstract.',
  },
  'acog-700': {
    citation:
      'ACOG Committee Opinion No. 700: Methods for estimating the due date. Obstet Gynecol 2017;129(5):e150-e154. doi:10.1097/AOG.0000000000002046',
    note: 'Seen: abstract + recommendations.',
  },
  'dating-notebook': {
    citation: 'Family-practice notebook: pregnancy dating',
    note: 'Seen: entry.',
  },
  'radiology-2024': {
    citation:
      'Radiology reference article: redating pregnancy (ultrasound), revised 27 Feb 2024, quoting ACOG 2017',
    note: 'Seen: full text.',
  },
  'lee-2017': {
    citation:
      'Lee ACC, Panchal P, Folger L, Whelan H, Whelan R, Rosner B, Blencowe H, Lawn JE. Diagnostic accuracy of neonatal assessment for gestational age: systematic review. Pediatrics 2017;140(6):e20171423',
    note: 'Seen: abstract.',
  },
  'hoffman-2008': {
    citation:
      'Hoffman CS, Messer LC, Mendola P, Savitz DA, Herring AH, Hartmann KE. Gestational age at birth by LMP vs first-trimester ultrasound. Paediatr Perinat Epidemiol 2008;22:587-596',
    note: 'Seen: abstract.',
  },
  'cdc-2022': {
    citation:
      'Centers for Disease Control and Prevention. Milestone checklists (2022 wording), with Zubler JM et al. Evidence-informed milestones for developmental surveillance tools. Pediatrics 2022;149(3):e2021052138',
    note: 'Seen: transcriptions in several concordant public files; the paper in its abstract.',
  },
  'newcombe-1998': {
    citation:
      'Newcombe RG. Two-sided confidence intervals for the single proportion: comparison of seven methods. Stat Med 1998;17:857-872',
    note: 'Seen: Table I values via a public test file.',
  },
  'prechtl-1977': {
    citation:
      'Prechtl HFR. The neurological examination of the full-term newborn infant, 2nd ed. Clinics in Developmental Medicine 63, 1977',
    note: 'Seen: not retrieved.',
  },
  'kumhar-2002': {
    citation:
      'Kumhar GD, Dua T, Gupta P. Plantar response in infancy. European Journal of Paediatric Neurology 6(6):321-325. (2002)',
    authors: 'Kumhar GD, Dua T, Gupta P',
    title: 'Plantar response in infancy',
    container: 'European Journal of Paediatric Neurology 6(6):321-325',
    doi: '10.1016/s1090-3798(02)90620-3',
    pmid: '12401457',
    url: 'https://suppr.wilddata.cn/browses/detail/pubmed/12401457',
    licence: 'not open',
    note: 'Abstract read in two copies. 1281 healthy term-born infants in India, thumbnail drag, both feet, three grades (extensor, flexor, equivocal). In the youngest group the printed shares add up to 100.4, so at least one of them is off by up to half a point.',
  },
  'gupta-2003': {
    citation:
      'Gupta A, Gupta P. Neonatal plantar response revisited. Journal of Paediatrics and Child Health 39(5):349-351. (2003)',
    authors: 'Gupta A, Gupta P',
    title: 'Neonatal plantar response revisited',
    container: 'Journal of Paediatrics and Child Health 39(5):349-351',
    doi: '10.1046/j.1440-1754.2003.00172.x',
    url: 'http://onlinelibrary.wiley.com/doi/10.1046/j.1440-1754.2003.00172.x/abstract',
    licence: 'not open',
    note: "Abstract read at the publisher's page of the DOI, which as stored shows neither title nor authors: these, the volume and the pages are from memory. 256 healthy term newborns of appropriate weight, tested daily until discharge in the first 7 days: 597 observations, thumbnail drag.",
  },
  'ohlweiler-2002': {
    citation:
      'Ohlweiler L, da Silva AR, Rotta NT. Parachute and lateral propping reactions in preterm children. Arquivos de Neuro-Psiquiatria 60(4):964-966. (2002)',
    authors: 'Ohlweiler L, da Silva AR, Rotta NT',
    title: 'Parachute and lateral propping reactions in preterm children',
    container: 'Arquivos de Neuro-Psiquiatria 60(4):964-966',
    doi: '10.1590/S0004-282X2002000600014',
    url: 'https://opact.sdu.edu.tr/vufind/SummonRecord/FETCH-LOGICAL-c494t-b26979b17312ce95af3d9bd71299169f68e595e755789c05c6535bbec7082e003',
    licence: 'open access in SciELO; check the article page for the licence',
    note: 'Abstract read in a library record. Born by 36 weeks 6 days at 2000 g or less, seen at 3, 6, 9 and 12 months corrected age. Sample size not in the abstract: 8.1 percent fits 3 of 37, 87.5 fits 35 of 40, 90 fits 36 of 40. By the authors of olhweiler-2005, where the first name is spelled otherwise.',
  },
  'kuhlman-1988': {
    citation:
      'Kuhlman KA, Burns KA, Depp R, Sabbagha RE. Ultrasonic imaging of normal fetal response to external vibratory acoustic stimulation. American Journal of Obstetrics and Gynecology 158(1):47-51. (1988)',
    authors: 'Kuhlman KA, Burns KA, Depp R, Sabbagha RE',
    title: 'Ultrasonic imaging of normal fetal response to external vibratory acoustic stimulation',
    container: 'American Journal of Obstetrics and Gynecology 158(1):47-51',
    doi: '10.1016/0002-9378(88)90773-9',
    pmid: '3337180',
    url: 'https://pubmed.ncbi.nlm.nih.gov/3337180/',
    licence: 'not open',
    note: 'Abstract read. 200 uncomplicated pregnancies, healthy at term, 26-41 weeks. Author list from memory. Size of each age group not printed.',
  },
  'hepper-1994': {
    citation:
      'Hepper PG, Shahidullah BS. Development of fetal hearing. Archives of Disease in Childhood Fetal and Neonatal Edition 71(2):F81-F87. (1994)',
    authors: 'Hepper PG, Shahidullah BS',
    title: 'Development of fetal hearing',
    container: 'Archives of Disease in Childhood Fetal and Neonatal Edition 71(2):F81-F87',
    doi: '10.1136/fn.71.2.f81',
    pmid: '7979483',
    url: 'https://pubmed.ncbi.nlm.nih.gov/7979483/',
    licence: 'free to read; not stated as open licence',
    note: 'Abstract read. Movement seen on ultrasound after pure tones at 19-35 weeks. Any movement counts, not a startle as such. Sample size not in the abstract.',
  },
  'vanheteren-2001': {
    citation:
      'van Heteren CF, Boekkooi PF, Jongsma HW, Nijhuis JG. Fetal habituation to vibroacoustic stimulation in relation to fetal states and fetal heart rate parameters. Early Human Development 61(2):135-145. (2001)',
    authors: 'van Heteren CF, Boekkooi PF, Jongsma HW, Nijhuis JG',
    title:
      'Fetal habituation to vibroacoustic stimulation in relation to fetal states and fetal heart rate parameters',
    container: 'Early Human Development 61(2):135-145',
    url: 'https://acnpsearch.tweb-dev.unibo.it/singlejournalindex/80225865',
    licence: 'not open',
    note: 'Abstract read. 37 healthy term fetuses tested twice 10 minutes apart; 32 classed in the first test.',
  },
  'smith-1991': {
    citation:
      'Smith CV, Davis SR, Rayburn WF, Nelson RM. Fetal habituation to vibroacoustic stimulation in uncomplicated term pregnancies. American Journal of Perinatology 8(6):380-382. (1991)',
    authors: 'Smith CV, Davis SR, Rayburn WF, Nelson RM',
    title: 'Fetal habituation to vibroacoustic stimulation in uncomplicated term pregnancies',
    container: 'American Journal of Perinatology 8(6):380-382',
    doi: '10.1055/s-2007-999420',
    url: 'https://www.thieme-connect.de/products/ejournals/abstract/10.1055/s-2007-999420',
    licence: 'not open',
    note: 'Abstract read. Habituation judged from the heart rate, not from movement. Volume from memory.',
  },
  'lawrence-1953': {
    citation:
      'Lawrence MM, Feind CR. Vestibular responses to rotation in the newborn infant. Pediatrics 12(3):300-306. (1953)',
    authors: 'Lawrence MM, Feind CR',
    title: 'Vestibular responses to rotation in the newborn infant',
    container: 'Pediatrics 12(3):300-306',
    doi: '10.1542/peds.12.3.300',
    url: 'https://bvbvf1.bib-bvb.de/vufind/PrimoRecord/cdi_proquest_miscellaneous_75331534',
    licence: 'not open',
    note: "Abstract read. 64 full-term newborns turned in a rotating apparatus. Author names from memory. Whole-body rotation, not the bedside doll's-eye manoeuvre.",
  },
  'flanagan-2012': {
    citation:
      'Flanagan JE, Landa R, Bhat A, Bauman M. Head lag in infants at risk for autism: a preliminary study. American Journal of Occupational Therapy 66(5):577-585. (2012)',
    authors: 'Flanagan JE, Landa R, Bhat A, Bauman M',
    title: 'Head lag in infants at risk for autism: a preliminary study',
    container: 'American Journal of Occupational Therapy 66(5):577-585',
    url: 'https://researchexperts-staging.utmb.edu/en/publications/head-lag-in-infants-at-risk-for-autism-a-preliminary-study',
    licence: 'not open',
    note: 'Abstract read (40 siblings followed; 20 high-risk and 21 low-risk compared; p .020 and .018). The shares (90, 54, 35, 75, 33 percent) were read on secondary pages: kennedykrieger.org (the research institute) and psychcentral.com.',
  },
  'bradshaw-2023': {
    citation:
      'Bradshaw J, Shi D, Federico A, Klaiman C, Saulnier C. The pull-to-sit task: examining infant postural development in autism spectrum disorder. Journal of Pediatrics 253:225-231.e2. (2023)',
    authors: 'Bradshaw J, Shi D, Federico A, Klaiman C, Saulnier C',
    title:
      'The pull-to-sit task: examining infant postural development in autism spectrum disorder',
    container: 'Journal of Pediatrics 253:225-231.e2',
    doi: '10.1016/j.jpeds.2022.09.047',
    pmid: '36202237',
    url: 'https://pubmed.ncbi.nlm.nih.gov/36202237/',
    licence: 'not open',
    note: 'Abstract read. 100 infants at raised or low family likelihood of autism, monthly from 1 to 6 months.',
  },
  'pineda-2016': {
    citation:
      'Pineda RG, Reynolds LC, Seefeldt K, Hilton C, Rogers CE, Inder TE. Head lag in infancy: what is it telling us? American Journal of Occupational Therapy 70(1):7001220010p1-p8. (2016)',
    authors: 'Pineda RG, Reynolds LC, Seefeldt K, Hilton C, Rogers CE, Inder TE',
    title: 'Head lag in infancy: what is it telling us?',
    container: 'American Journal of Occupational Therapy 70(1):7001220010p1-p8',
    doi: '10.5014/ajot.2016.017558',
    url: 'http://ajot.aota.org/article.aspx?articleid=2478828',
    licence: 'not open',
    note: 'Abstract read. 64 infants born at 30 weeks or less.',
  },
  'russell-2019': {
    citation:
      'Russell A. Prevalence of retained primitive reflexes in a class of healthy preschoolers. Mendeley Data, V1 (data set). (2019)',
    authors: 'Russell A',
    title: 'Prevalence of retained primitive reflexes in a class of healthy preschoolers',
    container: 'Mendeley Data, V1 (data set)',
    doi: '10.17632/893yxwfcr8.1',
    url: 'https://data.mendeley.com/datasets/893yxwfcr8/1',
    licence: 'public data set; licence label not in the passage seen',
    note: 'Description read. 21 children of one class, one examiner, scored 0-4. The text says 14 children are 50 percent of 21: misprint (67 percent), not used.',
  },
  'hickey-2021': {
    citation:
      'Hickey J, Feldhacker DR. Primitive reflex retention and attention among preschool children. Journal of Occupational Therapy, Schools, and Early Intervention, online 4 April 2021. (2021)',
    authors: 'Hickey J, Feldhacker DR',
    title: 'Primitive reflex retention and attention among preschool children',
    container:
      'Journal of Occupational Therapy, Schools, and Early Intervention, online 4 April 2021',
    doi: '10.1080/19411243.2021.1910606',
    url: 'https://doi.org/10.1080/19411243.2021.1910606',
    licence: 'not open',
    note: 'Abstract read in two copies. 27 preschool children aged 4-6, seven reflexes.',
  },
  'serra-2025': {
    citation:
      'Serra L, Rios DP, Rios M, de Almeida BL, Fernandes KS, Lucena R, de Siqueira IC. Primitive reflexes in infants with cerebral palsy due to congenital Zika syndrome and its relationship with other motor features. Frontiers in Pediatrics 13:1483959. (2025)',
    authors: 'Serra L, Rios DP, Rios M, de Almeida BL, Fernandes KS, Lucena R, de Siqueira IC',
    title:
      'Primitive reflexes in infants with cerebral palsy due to congenital Zika syndrome and its relationship with other motor features',
    container: 'Frontiers in Pediatrics 13:1483959',
    doi: '10.3389/fped.2025.1483959',
    url: 'https://www.frontiersin.org/journals/pediatrics/articles/10.3389/fped.2025.1483959',
    licence: 'Frontiers, CC BY expected; check the article page',
    note: 'Abstract read. Full text is open and would give shares per reflex.',
  },
  'zafeiriou-1998': {
    citation:
      'Zafeiriou DI, Tsikoulas IG, Kremenopoulos GM, Kontopoulos EE. Using postural reactions as a screening test to identify high-risk infants for cerebral palsy: a prospective study. Brain and Development 20(5):307-311. (1998)',
    authors: 'Zafeiriou DI, Tsikoulas IG, Kremenopoulos GM, Kontopoulos EE',
    title:
      'Using postural reactions as a screening test to identify high-risk infants for cerebral palsy: a prospective study',
    container: 'Brain and Development 20(5):307-311',
    url: 'https://www.bibsonomy.org/bibtex/262ee44c8cb44336a1afe301154e7444a/ar0berts',
    licence: 'not open',
    note: 'Abstract read. Author list from memory.',
  },
  'hamer-2016': {
    citation:
      'Hamer EG, Hadders-Algra M. Prognostic significance of neurological signs in high-risk infants: a systematic review. Developmental Medicine and Child Neurology 58(Suppl 4):53-60. (2016)',
    authors: 'Hamer EG, Hadders-Algra M',
    title:
      'Prognostic significance of neurological signs in high-risk infants: a systematic review',
    container: 'Developmental Medicine and Child Neurology 58(Suppl 4):53-60',
    doi: '10.1111/dmcn.13051',
    pmid: '27027608',
    url: 'http://pubmed.gov/27027608',
    licence: 'free to read at publisher (not checked)',
    note: 'Abstract read. 23 articles, 20 signs; the tables of sensitivity and specificity were not seen.',
  },
  'ellenberg-1981': {
    citation:
      'Ellenberg JH, Nelson KB. Early recognition of infants at high risk for cerebral palsy: examination at age four months. Developmental Medicine and Child Neurology 23(6):705-716. (1981)',
    authors: 'Ellenberg JH, Nelson KB',
    title:
      'Early recognition of infants at high risk for cerebral palsy: examination at age four months',
    container: 'Developmental Medicine and Child Neurology 23(6):705-716',
    doi: '10.1111/j.1469-8749.1981.tb02059.x',
    pmid: '7319139',
    url: 'https://pubmed.ncbi.nlm.nih.gov/7319139/',
    licence: 'not open',
    note: 'Abstract read. More than 32,000 children examined at four months and at seven years.',
  },
  'nelson-1979': {
    citation:
      'Nelson KB, Ellenberg JH. Neonatal signs as predictors of cerebral palsy. Pediatrics 64(2):225-232. (1979)',
    authors: 'Nelson KB, Ellenberg JH',
    title: 'Neonatal signs as predictors of cerebral palsy',
    container: 'Pediatrics 64(2):225-232',
    doi: '10.1542/peds.64.2.225',
    pmid: '471612',
    url: 'https://scilit.net/publications/ce31c99cc89e0cd3ee633147c2695834',
    licence: 'not open',
    note: 'Abstract read in two copies. About 40,000 infants. Author list from memory.',
  },
  'hamer-2018': {
    citation:
      'Hamer EG, La Bastide-Van Gemert S, Boxum AG, Dijkstra LJ, Hielkema T, Vermeulen RJ, Hadders-Algra M. The tonic response to the infant knee jerk as an early sign of cerebral palsy. Early Human Development, April 2018, 38-44. (2018)',
    authors:
      'Hamer EG, La Bastide-Van Gemert S, Boxum AG, Dijkstra LJ, Hielkema T, Vermeulen RJ, Hadders-Algra M',
    title: 'The tonic response to the infant knee jerk as an early sign of cerebral palsy',
    container: 'Early Human Development, April 2018, 38-44',
    pmid: '29549793',
    url: 'https://research.rug.nl/nl/publications/the-tonic-response-to-the-infant-knee-jerk-as-an-early-sign-of-ce-2',
    licence: 'not open',
    note: 'Abstract read. Muscle recordings; the knee jerk has no item in the table.',
  },
  'sarinoglu-1996': {
    citation:
      'Sarinoglu C, et al. Fetal startle response observed under ultrasonography: a good predictor of a reassuring biophysical profile. Obstetrics and Gynecology 88(4 Pt 1):599-602. (1996)',
    authors: 'Sarinoglu C, et al.',
    title:
      'Fetal startle response observed under ultrasonography: a good predictor of a reassuring biophysical profile',
    container: 'Obstetrics and Gynecology 88(4 Pt 1):599-602',
    doi: '10.1016/0029-7844(96)00228-1',
    pmid: '8841226',
    url: 'https://pubmed.ncbi.nlm.nih.gov/8841226/',
    licence: 'not open',
    note: 'Abstract read (cut off at the end).',
  },
  'hay-2018': {
    citation:
      'Hay K, Nelin M, Carey H, Chorna O, Moore-Clingenpeel M, Maitre N. Hammersmith Infant Neurological Examination asymmetry score detects hemiplegic cerebral palsy from typical development. Pediatric Neurology 87:70-74. (2018)',
    authors: 'Hay K, Nelin M, Carey H, Chorna O, Moore-Clingenpeel M, Maitre N',
    title:
      'Hammersmith Infant Neurological Examination asymmetry score detects hemiplegic cerebral palsy from typical development',
    container: 'Pediatric Neurology 87:70-74',
    doi: '10.1016/j.pediatrneurol.2018.07.002',
    pmid: '30190180',
    pmcid: 'PMC6320694',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC6320694',
    licence: 'author manuscript, free to read; reuse licence not stated',
    note: 'Abstract read. Whole examination, not one reflex.',
  },
  'straathof-2020': {
    citation:
      'Straathof EJM, Heineman KR, Hamer EG, Hadders-Algra M. Prevailing head position to one side in early infancy: a population-based study. Acta Paediatrica 109(7):1423-1429. (2020)',
    authors: 'Straathof EJM, Heineman KR, Hamer EG, Hadders-Algra M',
    title: 'Prevailing head position to one side in early infancy: a population-based study',
    container: 'Acta Paediatrica 109(7):1423-1429',
    doi: '10.1111/apa.15112',
    pmid: '31782830',
    pmcid: 'PMC7318227',
    url: 'https://www.ncbi.nlm.nih.gov/pmc/articles/PMC7318227/',
    licence: 'open access in PMC; check the licence there',
    note: 'Abstract read. 500 infants aged 2-6 months corrected, representative of the Dutch population.',
  },
  'boere-2001': {
    citation:
      'Boere-Boonekamp MM, van der Linden-Kuiper LT. Positional preference: prevalence in infants and follow-up after two years. Pediatrics 107(2):339-343. (2001)',
    authors: 'Boere-Boonekamp MM, van der Linden-Kuiper LT',
    title: 'Positional preference: prevalence in infants and follow-up after two years',
    container: 'Pediatrics 107(2):339-343',
    url: 'https://research.utwente.nl/en/publications/positional-preference-prevalence-in-infants-and-follow-up-after-t',
    licence: 'not open',
    note: 'Abstract read in three copies, with both authors. 7609 infants below 6 months. Journal, volume and pages from memory.',
  },
  'vanvlimmeren-2008': {
    citation:
      "van Vlimmeren LA, van der Graaf Y, Boere-Boonekamp MM, L'Hoir MP, Helders PJM, Engelbert RHH. Effect of pediatric physical therapy on deformational plagiocephaly in children with positional preference: a randomized controlled trial. Archives of Pediatrics and Adolescent Medicine 162(8):712-718. (2008)",
    authors:
      "van Vlimmeren LA, van der Graaf Y, Boere-Boonekamp MM, L'Hoir MP, Helders PJM, Engelbert RHH",
    title:
      'Effect of pediatric physical therapy on deformational plagiocephaly in children with positional preference: a randomized controlled trial',
    container: 'Archives of Pediatrics and Adolescent Medicine 162(8):712-718',
    doi: '10.1001/archpedi.162.8.712',
    pmid: '18678802',
    url: 'https://jamanetwork.com/journals/jamapediatrics/fullarticle/379936',
    licence: 'not open',
    note: 'Abstract read. Trial ISRCTN84132771. 380 infants referred at 7 weeks.',
  },
  'tan-1999': {
    citation:
      'Tan U, Tan M. Incidences of asymmetries for the palmar grasp reflex in neonates and hand preference in adults. NeuroReport 10(16):3253-3256. (1999)',
    authors: 'Tan U, Tan M',
    title:
      'Incidences of asymmetries for the palmar grasp reflex in neonates and hand preference in adults',
    container: 'NeuroReport 10(16):3253-3256',
    doi: '10.1097/00001756-199911080-00001',
    pmid: '10599829',
    url: 'https://avesis.ktu.edu.tr/yayin/44ca8440-be3b-4c5b-ba48-b96a6efb0969/incidences-of-asymmetries-for-the-palmar-grasp-reflex-in-neonates-and-hand-preference-in-adults',
    licence: 'not open',
    note: 'Abstract read in three copies. The number of newborns is not in it.',
  },
  'harris-1984': {
    citation:
      'Harris SR, Haley SM, Tada WL, Swanson MW. Reliability of observational measures of the Movement Assessment of Infants. Physical Therapy 64(4):471. (1984)',
    authors: 'Harris SR, Haley SM, Tada WL, Swanson MW',
    title: 'Reliability of observational measures of the Movement Assessment of Infants',
    container: 'Physical Therapy 64(4):471',
    doi: '10.1093/ptj/64.4.471',
    pmid: '6709711',
    url: 'https://www.ai-bt.com/si.php?db=pubmed&id=6709711',
    licence: 'not open',
    note: 'Abstract read.',
  },
  'stuberg-1989': {
    citation:
      'Stuberg WA, White PJ, Miedaner JA, Dehne PR. Item reliability of the Milani-Comparetti motor development screening test. Physical Therapy 69(5):328-335. (1989)',
    authors: 'Stuberg WA, White PJ, Miedaner JA, Dehne PR',
    title: 'Item reliability of the Milani-Comparetti motor development screening test',
    container: 'Physical Therapy 69(5):328-335',
    url: 'https://experts.nebraska.edu/en/publications/item-reliability-of-the-milani-comparetti-motor-development-scree',
    licence: 'not open',
    note: 'Abstract read. That test covers grasp, ATNR, Moro, STNR, foot grasp, righting, parachutes and tilting (content from memory).',
  },
  'pavageau-2020': {
    citation:
      "Pavageau L, Sanchez PJ, Brown LS, Chalak LF. Inter-rater reliability of the modified Sarnat examination in preterm infants at 32-36 weeks' gestation. Pediatric Research 87(4):697-702. (2020)",
    authors: 'Pavageau L, Sanchez PJ, Brown LS, Chalak LF',
    title:
      "Inter-rater reliability of the modified Sarnat examination in preterm infants at 32-36 weeks' gestation",
    container: 'Pediatric Research 87(4):697-702',
    doi: '10.1038/s41390-019-0562-x',
    pmid: '31493776',
    pmcid: 'PMC7078074',
    url: 'https://www.pubmed.gov/31493776/',
    licence: 'free to read in PMC; check the licence there',
    note: 'Abstract read. Full text in PMC would give kappa per item.',
  },
  'alves-2018': {
    citation:
      'Alves CIS, de Medeiros JG, Carrico LA, Arraes NM, de Alencar RF, de Melo AN. Interrater reliability of the Saint-Anne Dargassies Scale in assessing the neurological patterns of healthy preterm newborns. Revista Brasileira de Saude Materno Infantil 18(1). (2018)',
    authors: 'Alves CIS, de Medeiros JG, Carrico LA, Arraes NM, de Alencar RF, de Melo AN',
    title:
      'Interrater reliability of the Saint-Anne Dargassies Scale in assessing the neurological patterns of healthy preterm newborns',
    container: 'Revista Brasileira de Saude Materno Infantil 18(1)',
    doi: '10.1590/1806-93042018000100005',
    url: 'http://www.scielo.br/scielo.php?script=sci_arttext&pid=S1519-38292018000100103&lang=en',
    licence: 'open access in SciELO; check the licence',
    note: 'Abstract read. Full text open: would give counts per reflex at preterm ages.',
  },
  'gagnon-2012': {
    citation:
      'Gagnon K, Cannon S, Weatherstone KB. The Premie-Neuro: opportunities and challenges for standardized neurologic assessment of the preterm infant. Advances in Neonatal Care 12(5). (2012)',
    authors: 'Gagnon K, Cannon S, Weatherstone KB',
    title:
      'The Premie-Neuro: opportunities and challenges for standardized neurologic assessment of the preterm infant',
    container: 'Advances in Neonatal Care 12(5)',
    doi: '10.1097/ANC.0b013e318265b3fa',
    url: 'https://doi.org/10.1097/ANC.0b013e318265b3fa',
    licence: 'not open',
    note: 'Abstract read. 34 preterm infants, born at 29 weeks on average.',
  },
  'cameron-2006': {
    citation:
      'Cameron EC, Maehle V. Comparison of active motor items in infants born preterm and infants born full term. Pediatric Physical Therapy 18(3). (2006)',
    authors: 'Cameron EC, Maehle V',
    title: 'Comparison of active motor items in infants born preterm and infants born full term',
    container: 'Pediatric Physical Therapy 18(3)',
    doi: '10.1097/01.pep.0000229969.02895.d6',
    url: 'http://journals.lww.com/pedpt/Fulltext/2006/01830/Comparison_of_Active_Motor_Items_in_Infants_Born.4.aspx',
    licence: 'free access at publisher; not an open licence',
    note: 'Abstract read.',
  },
  'ling-1970': {
    citation:
      'Ling D, Ling AH, Doehring DG. Stimulus, response, and observer variables in the auditory screening of newborn infants. Journal of Speech and Hearing Research 13:9-18. (1970)',
    authors: 'Ling D, Ling AH, Doehring DG',
    title:
      'Stimulus, response, and observer variables in the auditory screening of newborn infants',
    container: 'Journal of Speech and Hearing Research 13:9-18',
    doi: '10.1044/jshr.1301.09',
    url: 'http://jslhr.pubs.asha.org/article.aspx?articleid=1754731',
    licence: 'not open',
    note: 'Abstract read.',
  },
  'xu-2011': {
    citation:
      'Xu Y, Yolton K, Khoury J. Earliest appropriate time for administering neurobehavioral assessment in newborn infants. Pediatrics 127(1):e69-e75. (2011)',
    authors: 'Xu Y, Yolton K, Khoury J',
    title:
      'Earliest appropriate time for administering neurobehavioral assessment in newborn infants',
    container: 'Pediatrics 127(1):e69-e75',
    doi: '10.1542/peds.2010-1121',
    pmid: '21172999',
    pmcid: 'PMC3375468',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC3375468',
    licence: 'free to read in PMC; reuse licence not stated',
    note: 'Abstract read.',
  },
  'wenzel-1978': {
    citation:
      'Wenzel D. The development of the parachute reaction: a visuo-vestibular response. Neuropädiatrie 9(4):351-359. (1978)',
    authors: 'Wenzel D',
    title: 'The development of the parachute reaction: a visuo-vestibular response',
    container: 'Neuropädiatrie 9(4):351-359',
    doi: '10.1055/s-0028-1091494',
    pmid: '311450',
    url: 'https://doi.org/10.1055/s-0028-1091494',
    licence: 'not open',
    note: 'Abstract read. Normal and motor-delayed infants moved quickly toward surfaces of three patterns. Title from memory.',
  },
  'jaffe-2000': {
    citation:
      'Jaffe M, Tal Y, Dabbah H, Ganelis L, Cohen A, Even L, Tirosh E. Infants with a thumb-in-fist posture. Pediatrics 105(3):e41. (2000)',
    authors: 'Jaffe M, Tal Y, Dabbah H, Ganelis L, Cohen A, Even L, Tirosh E',
    title: 'Infants with a thumb-in-fist posture',
    container: 'Pediatrics 105(3):e41',
    doi: '10.1542/peds.105.3.e41',
    url: 'https://doi.org/10.1542/peds.105.3.e41',
    licence: 'free to read',
    note: 'Abstract read. 200 healthy term newborns followed until the posture was gone; it prints 125 (62.5 percent) in the results and 65 percent in the conclusion. DOI from memory.',
  },
  'cp-prompts': {
    citation:
      'Childhood Disability LINK, McGill University. Early detection of cerebral palsy: prompts for referral. toolkit for community physicians',
    authors: 'Childhood Disability LINK, McGill University',
    title: 'Early detection of cerebral palsy: prompts for referral',
    container: 'toolkit for community physicians',
    url: 'https://childhooddisability.ca/staging/early-detection-of-cp',
    licence: 'not stated',
    note: 'Opening of the page read: hand preference before 12 months, stiff legs at 6-12 months, fisted hands after 4 months. That the signs come from an expert consensus (Boychuk et al. 2020) and the university are from memory.',
  },
  'sweeney-2013': {
    citation:
      'Sweeney JK, Blackburn S. Neonatal physiological and behavioral stress during neurological assessment. Journal of Perinatal and Neonatal Nursing 27(3):242-252. (2013)',
    authors: 'Sweeney JK, Blackburn S',
    title: 'Neonatal physiological and behavioral stress during neurological assessment',
    container: 'Journal of Perinatal and Neonatal Nursing 27(3):242-252',
    doi: '10.1097/JPN.0b013e31829dc329',
    url: 'https://doi.org/10.1097/JPN.0b013e31829dc329',
    licence: 'not open',
    note: 'Abstract read. 36 preterm (30-35 weeks) and 36 term newborns. Last page from memory.',
  },
  'allinson-2017': {
    citation:
      'Allinson LG, Denehy L, Doyle LW, Eeles AL, Dawson JA, Lee KJ, Spittle AJ. Physiological stress responses in infants at 29-32 weeks’ postmenstrual age during clustered nursing cares and standardised neurobehavioural assessments. BMJ Paediatrics Open 1(1):e000025. (2017)',
    authors: 'Allinson LG, Denehy L, Doyle LW, Eeles AL, Dawson JA, Lee KJ, Spittle AJ',
    title:
      'Physiological stress responses in infants at 29-32 weeks’ postmenstrual age during clustered nursing cares and standardised neurobehavioural assessments',
    container: 'BMJ Paediatrics Open 1(1):e000025',
    doi: '10.1136/bmjpo-2017-000025',
    pmid: '29637097',
    pmcid: 'PMC5842990',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC5842990',
    licence: 'open access',
    note: 'Abstract read. 34 infants born before 30 weeks.',
  },
  'praveen-2001': {
    citation:
      'Praveen V, Patole S, Whitehall J. Hyperekplexia in neonates. Postgraduate Medical Journal 77(911):570-572. (2001)',
    authors: 'Praveen V, Patole S, Whitehall J',
    title: 'Hyperekplexia in neonates',
    container: 'Postgraduate Medical Journal 77(911):570-572',
    doi: '10.1136/pmj.77.911.570',
    pmid: '11524514',
    pmcid: 'PMC1757896',
    url: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC1757896',
    licence: 'free to read',
    note: 'Abstract read.',
  },
  'saini-2020': {
    citation:
      'Saini AG, Pandey S. Hyperekplexia and other startle syndromes. Journal of the Neurological Sciences 416:117051. (2020)',
    authors: 'Saini AG, Pandey S',
    title: 'Hyperekplexia and other startle syndromes',
    container: 'Journal of the Neurological Sciences 416:117051',
    doi: '10.1016/j.jns.2020.117051',
    pmid: '32721683',
    url: 'https://pubmed.ncbi.nlm.nih.gov/32721683',
    licence: 'not open',
    note: 'Abstract read. Authors from memory.',
  },
  'assist-2017': {
    citation:
      'Hussain SA, Lay J, Cheng E, Weng J, Sankar R, Baca CB. Recognition of infantile spasms is often delayed: the ASSIST study. Journal of Pediatrics 190:215-221. (2017)',
    authors: 'Hussain SA, Lay J, Cheng E, Weng J, Sankar R, Baca CB',
    title: 'Recognition of infantile spasms is often delayed: the ASSIST study',
    container: 'Journal of Pediatrics 190:215-221',
    pmid: '29144248',
    url: 'https://pubmed.ncbi.nlm.nih.gov/29144248',
    licence: 'not open',
    note: 'Abstract read; the direction of the association with language in a report of the same study at a meeting (2016). Authors beyond the first two, volume and pages from memory.',
  },
  'lebonheur-spasms': {
    citation:
      'Le Bonheur Children’s Hospital. Seizure vs. reflex: identifying infantile epilepsy. hospital page for parents',
    authors: 'Le Bonheur Children’s Hospital',
    title: 'Seizure vs. reflex: identifying infantile epilepsy',
    container: 'hospital page for parents',
    url: 'https://www.lebonheur.org/blogs/practical-parenting/seizure-vs-reflex-identifying-infantile-epilepsy',
    licence: 'not open',
    note: 'Read. Says the spasms come mainly when awake.',
  },
  'childrens-spasms': {
    citation:
      'Children’s Health, Dallas. How to tell if your baby has infantile spasms. hospital page for parents, updated 2023. (2023)',
    authors: 'Children’s Health, Dallas',
    title: 'How to tell if your baby has infantile spasms',
    container: 'hospital page for parents, updated 2023',
    url: 'https://www.childrens.com/health-wellness/how-to-tell-if-your-baby-has-infantile-spasms',
    licence: 'not open',
    note: 'Opening read.',
  },
  'dftb-spasms': {
    citation:
      'Don’t Forget the Bubbles. Infantile spasms. open teaching page for paediatric emergency care',
    authors: 'Don’t Forget the Bubbles',
    title: 'Infantile spasms',
    container: 'open teaching page for paediatric emergency care',
    url: 'https://dontforgetthebubbles.com/infantile-spasms/',
    licence: 'not stated',
    note: 'Opening read.',
  },
  'wikipedia-moro': {
    citation: 'Wikipedia contributors. Moro reflex. Wikipedia',
    authors: 'Wikipedia contributors',
    title: 'Moro reflex',
    container: 'Wikipedia',
    url: 'https://en.wikipedia.org/wiki/Moro_reflex',
    licence: 'CC BY-SA 4.0',
    note: 'Read in copies of 2020 and 2025. That the response does not lessen with repetition it takes from Futagi et al. 2012, where the sentence was not seen.',
  },
  'physiopedia-moro': {
    citation: 'Physiopedia contributors. Moro reflex. Physiopedia',
    authors: 'Physiopedia contributors',
    title: 'Moro reflex',
    container: 'Physiopedia',
    url: 'https://www.physio-pedia.com/Moro_Reflex',
    licence: 'site licence; facts only used',
    note: 'Passage on eliciting read in a copy on another site. Two other teaching pages describe the same way of eliciting.',
  },
  'mesh-startle': {
    citation:
      'US National Library of Medicine. Medical Subject Headings: Reflex, startle; Reflex, Moro. descriptor notes',
    authors: 'US National Library of Medicine',
    title: 'Medical Subject Headings: Reflex, startle; Reflex, Moro',
    container: 'descriptor notes',
    url: 'https://meshb.nlm.nih.gov/record/ui?ui=D013216',
    licence: 'public domain',
    note: 'Read.',
  },
  'stanford-galant': {
    citation:
      'Newborn Nursery, Lucile Packard Children’s Hospital, Stanford. Galant reflex. teaching page with a film',
    authors: 'Newborn Nursery, Lucile Packard Children’s Hospital, Stanford',
    title: 'Galant reflex',
    container: 'teaching page with a film',
    url: 'http://newborns.stanford.edu/PhotoGallery/GalantReflex1.html',
    licence: 'not stated',
    note: 'Text read.',
  },
  'alfonso-traction': {
    citation:
      'Alfonso I. Postural observation and arm traction response (page 88). pediatricneuro.com, teaching pages on the newborn',
    authors: 'Alfonso I',
    title: 'Postural observation and arm traction response (page 88)',
    container: 'pediatricneuro.com, teaching pages on the newborn',
    url: 'http://pediatricneuro.com/alfonso/pg88.htm',
    licence: 'not stated',
    note: 'Read. The initial is from memory.',
  },
  'ot-glossary': {
    citation:
      'Occupational Therapy Services. Balance reaction or protective reaction. Occupational therapy glossary',
    authors: 'Occupational Therapy Services',
    title: 'Balance reaction or protective reaction',
    container: 'Occupational therapy glossary',
    url: 'http://occupationaltherapyservices.co.uk/glossary/balancereaction.html',
    licence: 'not stated',
    note: 'Entry read.',
  },
  'tilting-howto': {
    citation: 'Health site. How to test for a tilting reaction reflex. how-to page',
    title: 'How to test for a tilting reaction reflex',
    container: 'how-to page',
    url: 'https://222health.com/conditions-treatments/neurological-disorders/5506.html',
    licence: 'not stated',
    note: 'Read; a weak source that names no author. Its ages are not used.',
  },
  'ncdpi-2015': {
    citation:
      'North Carolina Department of Public Instruction. Early learning progressions, page 449: sits briefly, arms extend on falling forward. (2015)',
    authors: 'North Carolina Department of Public Instruction',
    title: 'Early learning progressions, page 449: sits briefly, arms extend on falling forward',
    container: 'online resource',
    url: 'https://earlylearningprogressions.fpg.unc.edu/age/3/449.html',
    licence: 'CC BY-NC-SA 4.0',
    note: 'Page read; it prints no age.',
  },
  'futagi-1987': {
    citation:
      'Futagi Y, Abe J, Tanaka J, Okamoto N. The diagnostic value of the Babkin reflex. No To Hattatsu 19(5):392-396. (1987)',
    authors: 'Futagi Y, Abe J, Tanaka J, Okamoto N',
    title: 'The diagnostic value of the Babkin reflex',
    container: 'No To Hattatsu 19(5):392-396',
    url: 'https://www.jstage.jst.go.jp/article/ojjscn1969/19/5/19_5_392/_article/-char/en',
    licence: 'free to read; licence not seen',
    note: 'Abstract read. 258 healthy infants, 22 with cerebral palsy, 29 with intellectual disability; preterm infants by corrected age.',
  },
  'ronnqvist-1998': {
    citation:
      'Rönnqvist L, Hopkins B, van Emmerik R, de Groot L. Lateral biases in head turning and the Moro response in the human newborn: are they both vestibular in origin? Developmental Psychobiology 33(4):339-349. (1998)',
    authors: 'Rönnqvist L, Hopkins B, van Emmerik R, de Groot L',
    title:
      'Lateral biases in head turning and the Moro response in the human newborn: are they both vestibular in origin?',
    container: 'Developmental Psychobiology 33(4):339-349',
    doi: '10.1002/(sici)1098-2302(199812)33:4<339::aid-dev5>3.0.co;2-r',
    url: 'https://doi.org/10.1002/(sici)1098-2302(199812)33:4%3C339::aid-dev5%3E3.0.co;2-r',
    licence: 'not open',
    note: 'Abstract read. 15 newborns at term, dropped with the whole body on a platform.',
  },
  'ronnqvist-2000': {
    citation:
      'Rönnqvist L, Hopkins B. Motor asymmetries in the human newborn are state dependent, but independent of position in space. Experimental Brain Research 134(3):378-384. (2000)',
    authors: 'Rönnqvist L, Hopkins B',
    title:
      'Motor asymmetries in the human newborn are state dependent, but independent of position in space',
    container: 'Experimental Brain Research 134(3):378-384',
    url: 'https://eprints.lancs.ac.uk/id/eprint/70115/',
    licence: 'not open',
    note: 'Abstract read. Number of newborns not in it.',
  },
};
