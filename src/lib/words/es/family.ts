/**
 * Spanish for the family's page: plain, of no one country, with usted. The child's gender never has to
 * be known: where another wording would turn on it, the sentence goes round it, and only {they} (ella,
 * él, or the name) tells it. {names} reads "de ..." and {them} "a ...". Places in braces are told in
 * words/family.ts.
 */
import type { AboutAge, ChildPlaces, FamilyWords, Who } from '../family.ts';

const PRONOUN = { she: 'ella', he: 'él' } as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function child({ calledName, pronoun }: Who): ChildPlaces {
  const name = calledName || 'su bebé';
  const they = pronoun === 'she' || pronoun === 'he' ? PRONOUN[pronoun] : name;
  return {
    name,
    Name: capital(name),
    names: `de ${name}`,
    Names: `De ${name}`,
    they,
    They: capital(they),
    them: `a ${name}`,
    their: 'su',
    Their: 'Su',
  };
}

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
const ofMonths = (n: number): string => counted(n, 'mes', 'meses');
const ofWeeks = (n: number): string => counted(n, 'semana', 'semanas');
const ofDays = (n: number): string => counted(n, 'día', 'días');

const ofUnit = (n: number, unit: AboutAge['unit']): string =>
  unit === 'weeks' ? ofWeeks(n) : ofMonths(n);

/** An age as a point in time, with its article: "las 6 semanas". */
const point = ({ unit, count }: AboutAge): string =>
  unit === 'weeks'
    ? count === 1
      ? 'la primera semana'
      : `las ${ofWeeks(count)}`
    : count === 1
      ? 'el primer mes'
      : `los ${ofMonths(count)}`;

const originOf = ({ clock }: AboutAge): string =>
  clock === 'due' ? 'la fecha probable de parto' : 'el nacimiento';

/** The day an age is counted from, where that has to be said. */
const since = (age: AboutAge): string => (age.clock === 'age' ? '' : ` desde ${originOf(age)}`);

function placed(age: AboutAge): string {
  if (age.count === 0) return originOf(age);
  if (age.count > 0) return `${point(age)}${since(age)}`;
  return `${ofUnit(-age.count, age.unit)} antes de ${originOf(age)}`;
}

export const family: FamilyWords = {
  tag: 'es',
  ownName: 'Español',
  child,
  title: { visit: 'Sobre la visita {names}', course: 'Sobre las visitas {names} hasta hoy' },
  headings: {
    who: 'La edad {names}',
    looked: 'Qué revisamos',
    talk: 'De qué más queremos hablar',
    today: 'Qué pensamos',
    next: 'Qué sigue ahora',
    help: 'Cómo puede ayudar',
    call: 'Cuándo llamarnos',
    urgent: 'Llame de inmediato',
    clinic: 'Su clínica',
    caution: 'Sobre esta hoja',
  },
  meantThen: 'Qué significaba ese día',
  thoughtThen: 'Qué pensamos ese día',
  labels: {
    did: 'Qué hicimos',
    saw: 'Qué vimos',
    means: 'Qué significa hoy',
    next: 'Qué sigue ahora',
    clinic: 'Clínica',
    phone: 'Teléfono',
    chart: 'La gráfica {names} hasta hoy',
    edited: 'Escrito por su clínica',
    write: 'Espacio para notas y preguntas',
    invented: 'Un ejemplo inventado. No es un bebé real.',
  },
  sentences: {
    'who.born': '{Name} nació el {date}.',
    'who.born-early': 'Fue {span} antes de la fecha probable de parto. Esa fecha era el {date}.',
    'who.age': 'Ese día, {name} tenía {age}.',
    'who.age-birth': 'Si contamos desde que nació, {they} tenía {age} ese día.',
    'who.age-due': 'Si contamos desde la fecha probable de parto, {they} tendría {age}.',
    'who.age-before-due': 'La fecha probable de parto era {age} más tarde.',
    'who.age-at-due': 'Ese día era la fecha probable de parto.',
    'who.why':
      'Aquí contamos desde la fecha probable de parto. Los bebés que nacen antes aún necesitan esas semanas para crecer.',
    'who.past': '{Name} nació antes de tiempo. A esta edad ya contamos desde que nació.',
    'who.doubt':
      'La fecha probable de parto puede variar hasta {span}. Por eso, las edades y fechas de aquí pueden variar lo mismo.',
    'who.seen': 'Vimos a {name} el {date}.',
    'who.course': 'Vimos a {name} {times}: la primera el {from} y la última el {to}.',
    'who.newer':
      'Después de ese día nos volvimos a ver. Esta hoja no habla de esa visita. Pregúntenos.',
    'looked.intro':
      'Los bebés hacen algunos movimientos sin pensar. Unos aparecen y otros desaparecen al crecer. Revisamos algunos.',
    'looked.nothing': 'Aún no hemos revisado nada.',
    'looked.few': 'Solo pudimos revisar unas pocas cosas. Por eso, esta hoja aún no dice mucho.',
    'looked.more': 'Revisamos más de lo que está aquí. Si quiere saber del resto, pregúntenos.',
    'looked.few-more': 'Hay un poco más de lo que está aquí. Si quiere saberlo, pregúntenos.',
    'talk.intro': 'También queremos hablar con usted de esto:',
    'today.talk':
      'Hay cosas de las que queremos hablar con usted: puede haber muchas razones, y aún no sabemos qué quieren decir.',
    'today.doctor': 'Un médico tiene que ver a {name} hoy, y le diremos adónde ir.',
    'today.watch': 'Hay cosas que queremos volver a revisar, y puede que todo esté bien.',
    'today.fits': 'Lo que vimos es lo que se espera a esta edad.',
    'today.fits-open': 'Lo que vimos puede ser lo que se espera a esta edad.',
    'today.fits-so-far':
      'Lo que pudimos revisar es lo que se espera a esta edad, y hay cosas que aún no sabemos.',
    'today.fits-so-far-open':
      'Lo que pudimos revisar puede ser lo que se espera a esta edad, y hay cosas que aún no sabemos.',
    'today.cannot-tell': 'Aún no lo sabemos, y por eso hace falta volver a revisar.',
    'next.doctor': 'Primero, un médico ve a {name}.',
    'next.team': 'Hablaremos de esto en nuestro equipo y después con usted.',
    'next.visit': 'La próxima visita es el {date}.',
    'next.by': 'Queremos volver a ver a {name} a más tardar el {date}.',
    'next.due': 'Ya toca la próxima visita. Por favor, llámenos esta semana y fijamos un día.',
    'next.none': 'No tenemos otra visita planeada. Si tiene una pregunta, llámenos cuando quiera.',
    'help.no-practice':
      'No hay que practicar nada de esto. Por favor, no intente provocarlo en casa. No es un examen: ni usted ni {name} pueden fallar.',
    'help.daily': 'Cargue {them}, hable, cante y juegue como todos los días. Eso ayuda.',
    'help.tummy':
      'Cuando {name} no esté durmiendo, deje que pase un rato boca abajo. Quédese siempre a su lado.',
    'help.floor': 'Deje que {name} se mueva y juegue en un piso seguro, con usted cerca.',
    'help.sleep': 'Para dormir, acueste siempre {them} boca arriba.',
    'help.sleep-home': 'En casa, para dormir, acueste siempre {them} boca arriba.',
    'help.pace': 'Usted ve {them} todos los días. Cuéntenos lo que nota.',
    'call.any': 'Llámenos si tiene dudas o algo le preocupa, aunque le parezca poco.',
    'call.ask': 'Llámenos si {name} hace movimientos nuevos que usted no entiende.',
    'urgent.intro': 'Llámenos de inmediato si ve algo de esto:',
    'urgent.skills':
      '{Name} ya no hace algo que había aprendido, como mirar a las personas, sostener la cabeza o tomar cosas con la mano.',
    'urgent.feeding':
      '{Name} no toma bien el pecho o el biberón, se atraganta mucho o no quiere comer.',
    'urgent.tone': 'Siente que el cuerpo {names} está muy flojo o muy rígido.',
    'urgent.fit':
      '{Name} tiene una convulsión: da sacudidas o se queda con la mirada fija, y usted no logra que pare.',
    'urgent.spasms':
      '{Name} abre los brazos de golpe, o dobla la cabeza o el cuerpo, por uno o dos segundos, una y otra vez. Nada lo causa. Suele pasar al despertar. Puede parecer un sobresalto. Si puede, grabe un video para nosotros.',
    'urgent.side':
      '{Name} no mueve un brazo, una pierna o un lado del cuerpo, o lo mueve mucho menos.',
    'urgent.number':
      'Llame al número de emergencias si {name} tiene su primera convulsión, o una que no para. Haga lo mismo si {they} no respira bien o no se despierta, o si no le contestamos.',
    'caution.instead':
      'Esta hoja no toma el lugar de lo que le dice su clínica. Si no dicen lo mismo, siga lo que dice su clínica.',
    'caution.guides':
      'Nuestras guías son libros y estudios de cuándo los bebés hacen estas cosas. No dicen todas lo mismo.',
    'caution.limits': 'Dice lo que revisamos. No puede decir qué enfermedad hay, ni descartarla.',
  },
  aboutReflex: {
    when: 'Lo revisamos por última vez el {date}.',
    since: 'Desde entonces no lo hemos vuelto a revisar.',
    other: 'Queremos revisarlo una vez más antes de decirle qué vimos.',
    tried: 'Lo intentamos otra vez el {date}, pero no pudimos saberlo.',
    came: 'El {from} aún no lo vimos. El {to} ya lo vimos.',
    went: 'El {from} lo vimos. El {to} ya no lo vimos.',
    talk: '{reflex}',
    'goes-by': 'Puede tardar en desaparecer hasta el {date}, {when}.',
    'goes-between':
      'Muchas de nuestras guías esperan que ya no esté el {from}, y la última, el {to}, {when}.',
    'goes-later': 'Más adelante puede desaparecer, {when}. Puede tardar hasta el {date}.',
    'comes-by': 'Puede tardar en aparecer hasta el {date}, {when}.',
    'comes-between': 'Puede aparecer entre el {from} y el {to}, {when}.',
    'look-again': 'Queremos volver a revisarlo en la próxima visita.',
    'why-talk': 'Queremos hablar de esto con usted.',
    'no-date': 'No hay una fecha fija para que esto cambie.',
    'soon-by':
      'Pronto tal vez revisemos esto: {reflex}. Puede tardar en aparecer hasta el {date}, {when}.',
  },
  ownReflex: { name: '{reflex}', did: 'Miramos cómo se movía {name}.' },
  saw: {
    'not-elicited': {
      one: 'No lo vimos.',
      both: 'No lo vimos en ningún lado.',
      side: 'En el lado {side} no lo vimos.',
    },
    weak: {
      one: 'Lo vimos, pero débil.',
      both: 'Lo vimos en los dos lados, pero débil.',
      side: 'En el lado {side} lo vimos, pero débil.',
    },
    elicited: {
      one: 'Lo vimos.',
      both: 'Lo vimos en los dos lados.',
      side: 'En el lado {side} lo vimos.',
    },
    brisk: {
      one: 'Lo vimos, rápido y fuerte.',
      both: 'Lo vimos en los dos lados, rápido y fuerte.',
      side: 'En el lado {side} lo vimos, rápido y fuerte.',
    },
    obligatory: {
      one: 'Lo vimos. A {name} le costó salir de esa postura.',
      both: 'Lo vimos en los dos lados. A {name} le costó salir de esa postura.',
      side: 'En el lado {side} lo vimos. A {name} le costó salir de esa postura.',
    },
    'not-assessable': {
      one: 'Esta vez no lo pudimos revisar.',
      both: 'Esta vez no lo pudimos revisar.',
      side: 'En el lado {side} no lo pudimos revisar.',
    },
    'not-counted': {
      one: 'No lo vimos. Pero {name} {state}. Así no cuenta.',
      both: 'No lo vimos. Pero {name} {state}. Así no cuenta.',
      side: 'En el lado {side} no lo vimos. Pero {name} {state}. Así no cuenta.',
    },
  },
  sides: { left: 'izquierdo', right: 'derecho', midline: 'del medio' },
  states: {
    'quiet-sleep': 'dormía',
    'active-sleep': 'dormía',
    drowsy: 'tenía sueño',
    'quiet-alert': 'no dormía',
    'active-alert': 'no dormía',
    crying: 'lloraba',
    'not-recorded': 'no dormía',
  },
  means: {
    'talk-held': {
      firm: 'A {name} le costó salir de esta postura. A cualquier edad, eso hay que revisarlo mejor.',
      open: 'A {name} le costó salir de esta postura. A cualquier edad, eso hay que revisarlo mejor.',
    },
    'talk-returned': {
      firm: 'Ya no lo tenía. {Now} lo vimos otra vez.',
      open: 'Ya no lo tenía. {Now} lo vimos otra vez.',
      oneSide: {
        firm: 'Ya no lo tenía. En el lado {side} lo vimos otra vez.',
        open: 'Ya no lo tenía. En el lado {side} lo vimos otra vez.',
      },
    },
    'talk-sides': {
      firm: 'Los dos lados no hicieron lo mismo. A {age} se espera que los dos lados hagan lo mismo.',
      open: 'Los dos lados no hicieron lo mismo. A {age} tal vez se espera que lo hagan.',
    },
    'talk-still-there': {
      firm: 'Todavía lo {has}. A {age} se espera que ya no lo tenga.',
      open: 'Todavía lo {has}. A {age}, algunas de nuestras guías esperan que ya no lo tenga, y otras no.',
      oneSide: {
        firm: 'En el lado {side} todavía lo {has}. A {age} se espera que ya no lo tenga.',
        open: 'En el lado {side} todavía lo {has}. A {age}, algunas de nuestras guías esperan que ya no lo tenga, y otras no.',
      },
      ofFeeding: {
        firm: 'Todavía lo {has}. A {age} se espera que los bebés coman sin esto.',
        open: 'Todavía lo {has}. A {age}, algunas de nuestras guías esperan que los bebés coman sin esto, y otras no.',
        oneSide: {
          firm: 'En el lado {side} todavía lo {has}. A {age} se espera que los bebés coman sin esto.',
          open: 'En el lado {side} todavía lo {has}. A {age}, algunas de nuestras guías esperan que los bebés coman sin esto, y otras no.',
        },
      },
    },
    'talk-not-seen': {
      firm: 'A {age} se espera verlo.',
      open: 'A {age}, algunas de nuestras guías esperan verlo, y otras no.',
    },
    'talk-gone': {
      firm: 'Antes sí lo tenía. A {age} aún se espera verlo.',
      open: 'Antes sí lo tenía. A {age}, algunas de nuestras guías aún esperan verlo, y otras no.',
      oneSide: {
        firm: 'En el lado {side} antes sí lo tenía. A {age} aún se espera verlo.',
        open: 'En el lado {side} antes sí lo tenía. A {age}, algunas de nuestras guías aún esperan verlo, y otras no.',
      },
    },
    'talk-lost': {
      firm: 'Antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
      open: 'Antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
      oneSide: {
        firm: 'En el lado {side} antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
        open: 'En el lado {side} antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
      },
    },
    'watch-sides': {
      firm: 'Los dos lados no fueron del todo iguales.',
      open: 'Los dos lados no fueron del todo iguales.',
    },
    'watch-sides-common': {
      firm: 'Los dos lados no fueron del todo iguales. A muchos bebés les pasa.',
      open: 'Los dos lados no fueron del todo iguales. A muchos bebés les pasa.',
    },
    'watch-faint': {
      firm: 'Fue débil. A {age} suele verse más claro.',
      open: 'Fue débil. A {age} puede verse más claro.',
      oneSide: {
        firm: 'En el lado {side} fue débil. A {age} suele verse más claro.',
        open: 'En el lado {side} fue débil. A {age} puede verse más claro.',
      },
    },
    'watch-strong': {
      firm: 'Fue fuerte. Eso, por sí solo, nos dice poco.',
      open: 'Fue fuerte. Eso, por sí solo, nos dice poco.',
      oneSide: {
        firm: 'En el lado {side} fue fuerte. Eso, por sí solo, nos dice poco.',
        open: 'En el lado {side} fue fuerte. Eso, por sí solo, nos dice poco.',
      },
    },
    'watch-still-there': {
      firm: 'Todavía lo {has}. A {age} se espera que poco a poco ya no lo tenga.',
      open: 'Todavía lo {has}. Tal vez ya {is} tiempo de que desaparezca.',
      oneSide: {
        firm: 'En el lado {side} todavía lo {has}. A {age} se espera que poco a poco ya no lo tenga.',
        open: 'En el lado {side} todavía lo {has}. Tal vez ya {is} tiempo de que desaparezca.',
      },
      ofFeeding: {
        firm: 'Todavía lo {has}. A {age} se espera que los bebés empiecen a comer sin esto.',
        open: 'Todavía lo {has}. A {age}, tal vez los bebés empiezan a comer sin esto.',
        oneSide: {
          firm: 'En el lado {side} todavía lo {has}. A {age} se espera que los bebés empiecen a comer sin esto.',
          open: 'En el lado {side} todavía lo {has}. A {age}, tal vez los bebés empiezan a comer sin esto.',
        },
      },
    },
    'watch-not-seen': {
      firm: 'Más o menos a {age} se espera verlo.',
      open: 'Tal vez ya {is} tiempo de verlo.',
    },
    'watch-may-lack': {
      firm: 'No lo vimos. Hay bebés sanos que no lo muestran.',
      open: 'No lo vimos. Hay bebés sanos que no lo muestran.',
    },
    'watch-gone': {
      firm: 'Antes sí lo tenía. A {age} todavía se puede ver.',
      open: 'Antes sí lo tenía. Algunas de nuestras guías esperan verlo más tiempo, y otras no.',
      oneSide: {
        firm: 'En el lado {side} antes sí lo tenía. A {age} todavía se puede ver.',
        open: 'En el lado {side} antes sí lo tenía. Algunas de nuestras guías esperan verlo más tiempo, y otras no.',
      },
    },
    'watch-lost': {
      firm: 'Antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
      open: 'Antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
      oneSide: {
        firm: 'En el lado {side} antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
        open: 'En el lado {side} antes sí lo vimos, y esta vez no. Queremos volver a revisarlo.',
      },
    },
    'watch-again': {
      firm: 'Una sola vez no basta para saber. Queremos probar otra vez.',
      open: 'Una sola vez no basta para saber. Queremos probar otra vez.',
    },
    'watch-soon': {
      firm: 'Apareció antes de lo que se espera. Eso, por sí solo, nos dice poco.',
      open: 'Tal vez apareció antes de lo que se espera.',
    },
    there: {
      firm: 'Es lo que se espera a {age}.',
      open: 'Puede ser lo que se espera a {age}.',
    },
    away: {
      firm: 'Es lo que se espera a {age}.',
      open: 'Puede ser lo que se espera a {age}.',
    },
    fading: {
      firm: 'A {age} se va poco a poco. Eso lleva tiempo.',
      open: 'Algunas de nuestras guías dicen que a {age} se va. Otras no.',
      ofFeeding: {
        firm: 'A {age}, los bebés aprenden poco a poco a comer sin esto.',
        open: 'Algunas de nuestras guías dicen que a {age} ya come sin esto. Otras no.',
      },
    },
    'may-come': {
      firm: 'A {age} aún tiene tiempo de aparecer.',
      open: 'A {age} puede que aún aparezca.',
    },
    'gone-may-come': {
      firm: 'Antes sí lo tenía. A {age} aún no tiene que estar.',
      open: 'Antes sí lo tenía. A {age} tal vez aún no tiene que estar.',
    },
    soon: {
      firm: 'Apareció un poco antes de lo que se espera. Eso, por sí solo, nos dice poco.',
      open: 'Tal vez apareció un poco antes de lo que se espera.',
    },
    'cannot-tell-state': {
      firm: 'Aún no lo sabemos. Hay que revisarlo cuando {name} esté en calma y sin sueño.',
      open: 'Aún no lo sabemos. Hay que revisarlo cuando {name} esté en calma y sin sueño.',
    },
    'cannot-tell-tried': {
      firm: 'Aún no lo sabemos. Vamos a probar otra vez.',
      open: 'Aún no lo sabemos. Vamos a probar otra vez.',
    },
    'cannot-tell-silent': {
      firm: 'Aún no lo sabemos. Nuestras guías dicen poco de {age}.',
      open: 'Aún no lo sabemos. Nuestras guías dicen poco de {age}.',
    },
  },
  tense: {
    now: { age: 'esta edad', Now: 'Ahora', has: 'tiene', is: 'es' },
    then: { age: 'esa edad', Now: 'Ese día', has: 'tenía', is: 'era' },
  },
  reflexes: {
    'acoustic-startle': {
      name: 'el salto ante un ruido fuerte (sobresalto)',
      did: 'Hicimos un ruido corto fuera de su vista. Miramos si cerraba los ojos y daba un salto.',
    },
    amphibian: {
      name: 'doblar un lado para arrastrarse (anfibio)',
      did: 'Con {name} boca abajo, levantamos un lado de la cadera. Miramos si se doblaban la rodilla y el brazo de ese lado.',
    },
    atnr: {
      name: 'estirar un brazo al girar la cabeza (tónico del cuello)',
      did: 'Giramos la cabeza {names} a un lado. Miramos si el brazo de ese lado se estiraba y el otro se doblaba.',
    },
    babkin: {
      name: 'abrir la boca al presionar las palmas (Babkin)',
      did: 'Le presionamos las dos palmas. Miramos si abría la boca.',
    },
    'body-righting-body': {
      name: 'girar por partes (cuerpo con cuerpo)',
      did: 'Le ayudamos a girar. Miramos si primero iba la cadera, luego el pecho y luego la cabeza.',
    },
    'body-righting-head': {
      name: 'levantar la cabeza del piso (cuerpo con cabeza)',
      did: 'Pusimos {them} sobre una manta. Miramos si levantaba la cabeza.',
    },
    crawling: {
      name: 'empujar con el pie para arrastrarse (arrastre)',
      did: 'Con {name} boca abajo, le pusimos una mano en los pies. Miramos si empujaba para ir hacia delante.',
    },
    'crossed-extension': {
      name: 'la otra pierna se estira (extensión cruzada)',
      did: 'Tomamos una pierna y frotamos ese pie. Miramos si la otra se doblaba y luego se estiraba.',
    },
    'dolls-eye': {
      name: 'los ojos se quedan atrás al girar la cabeza (ojos de muñeca)',
      did: 'Giramos la cabeza {names} a un lado. Miramos si los ojos se quedaban un poco atrás.',
    },
    'equilibrium-prone': {
      name: 'no perder el equilibrio boca abajo (equilibrio)',
      did: 'Con {name} boca abajo, inclinamos un poco la mesa. Miramos si movía la espalda y la cabeza para no caer.',
    },
    'equilibrium-quadruped': {
      name: 'no perder el equilibrio al gatear (equilibrio)',
      did: 'Con {name} en posición de gateo, inclinamos un poco la mesa. Miramos si movía la espalda y la cabeza para no caer.',
    },
    'equilibrium-sitting': {
      name: 'no perder el equilibrio en posición sentada (equilibrio)',
      did: 'Inclinamos un poco el asiento. Miramos si movía la espalda y la cabeza para no caer.',
    },
    'equilibrium-standing': {
      name: 'no perder el equilibrio de pie (equilibrio)',
      did: 'Con {name} de pie, inclinamos un poco el piso. Miramos si movía las piernas, los brazos y la cabeza para no caer.',
    },
    'equilibrium-supine': {
      name: 'no perder el equilibrio boca arriba (equilibrio)',
      did: 'Con {name} boca arriba, inclinamos un poco la mesa. Miramos si movía la espalda y la cabeza para no caer.',
    },
    'extensor-thrust': {
      name: 'la pierna que se estira de golpe (empuje)',
      did: 'Con la pierna doblada, le tocamos el pie. Miramos si la estiraba de golpe.',
    },
    'flexor-withdrawal': {
      name: 'quitar el pie (retirada)',
      did: 'Le dimos un toque rápido en el pie. Miramos si quitaba la pierna.',
    },
    galant: {
      name: 'doblar la espalda al tocarla (Galant)',
      did: 'Pasamos un dedo por un lado de la espalda. Miramos si la cadera iba hacia ese lado.',
    },
    glabellar: {
      name: 'cerrar los ojos al tocar la frente (glabelar)',
      did: 'Dimos un toque suave entre las cejas. Miramos si cerraba los ojos un momento.',
    },
    'labyrinthine-righting': {
      name: 'enderezar la cabeza sin ver (laberíntico)',
      did: 'Le tapamos los ojos e inclinamos {them} a un lado. Miramos si enderezaba la cabeza.',
    },
    landau: {
      name: 'la postura de volar (Landau)',
      did: 'Sostuvimos {them} en el aire, boca abajo. Miramos si levantaba la cabeza, la espalda y las piernas.',
    },
    moro: {
      name: 'abrir los brazos al sentir que cae (Moro)',
      did: 'Dejamos que la cabeza {names} bajara un poquito y la sostuvimos. Miramos si abría los dos brazos y los volvía a cerrar.',
    },
    'neck-righting': {
      name: 'girar como un tronco con la cabeza (cuello con cuerpo)',
      did: 'Giramos la cabeza {names} a un lado. Miramos si todo el cuerpo iba detrás.',
    },
    'optical-righting': {
      name: 'enderezar la cabeza con la vista (óptico)',
      did: 'Inclinamos {them} a un lado. Miramos si enderezaba la cabeza.',
    },
    'palmar-grasp': {
      name: 'cerrar la mano (prensión palmar)',
      did: 'Pusimos un dedo en la palma {names}. Miramos si la mano se cerraba.',
    },
    perez: {
      name: 'arquear la espalda al tocarla (Pérez)',
      did: 'Pasamos un dedo por la espalda, de abajo arriba. Miramos si alzaba la cabeza y arqueaba la espalda.',
    },
    'placing-arm': {
      name: 'poner la mano en la mesa (apoyo de la mano)',
      did: 'Le tocamos el dorso de la mano con el borde de la mesa. Miramos si ponía la mano encima.',
    },
    'placing-leg': {
      name: 'poner el pie en la mesa (apoyo del pie)',
      did: 'Le tocamos el dorso del pie con el borde de la mesa. Miramos si ponía el pie encima.',
    },
    'plantar-grasp': {
      name: 'cerrar los dedos del pie (prensión plantar)',
      did: 'Pusimos el pulgar bajo los dedos del pie. Miramos si los cerraba.',
    },
    'plantar-response': {
      name: 'el dedo gordo del pie que sube (plantar)',
      did: 'Pasamos algo por la planta del pie. Miramos si el dedo gordo subía.',
    },
    'positive-support': {
      name: 'las piernas que sostienen peso (apoyo)',
      did: 'Sostuvimos {them} con los pies en la mesa. Miramos si estiraba las piernas y sostenía algo de peso.',
    },
    'protective-backward': {
      name: 'poner la mano al caer hacia atrás (defensa)',
      did: 'Con {name} en posición sentada, empujamos hacia atrás. Miramos si ponía una mano detrás.',
    },
    'protective-downward': {
      name: 'abrir las piernas al bajar (defensa)',
      did: 'Sostuvimos {them} y bajamos un poco rápido. Miramos si abría las piernas para llegar al piso.',
    },
    'protective-forward': {
      name: 'poner las manos al caer hacia delante (defensa)',
      did: 'Inclinamos {them} hacia delante. Miramos si sacaba los dos brazos.',
    },
    'protective-sideways': {
      name: 'poner la mano al caer de lado (defensa)',
      did: 'Con {name} en posición sentada, empujamos a un lado. Miramos si ponía una mano de ese lado.',
    },
    'protective-stepping': {
      name: 'dar un paso para no caer (defensa)',
      did: 'Con {name} de pie, empujamos muy suave. Miramos si daba un paso.',
    },
    rooting: {
      name: 'girar la cara al tocar la mejilla (búsqueda)',
      did: 'Le tocamos la cara junto a la boca. Miramos si giraba la cabeza y abría la boca.',
    },
    snout: {
      name: 'sacar los labios al tocarlos (hociqueo)',
      did: 'Dimos un toque suave en los labios. Miramos si los sacaba.',
    },
    stepping: {
      name: 'dar pasos sobre la mesa (marcha)',
      did: 'Sostuvimos {them} con los pies en la mesa. Miramos si daba pasos.',
    },
    stnr: {
      name: 'mover brazos y piernas con la cabeza (tónico del cuello, los dos lados)',
      did: 'Le inclinamos la cabeza hacia delante y hacia atrás. Miramos si se doblaban los brazos y luego las piernas.',
    },
    sucking: {
      name: 'chupar sin pensar (succión)',
      did: 'Le pusimos un dedo limpio en la boca. Miramos si se ponía a chupar.',
    },
    swallowing: {
      name: 'tragar (deglución)',
      did: 'Miramos cómo comía. Miramos si tragaba bien y sin tos.',
    },
    swimming: {
      name: 'mover brazos y piernas en el agua (nado)',
      did: 'Se trata de cómo se mueven los bebés en el agua. No lo probamos, y usted no debe probarlo.',
    },
    tlr: {
      name: 'encoger o estirar el cuerpo con la cabeza (tónico laberíntico)',
      did: 'Pusimos {them} boca abajo. Luego, boca arriba. Miramos si dobla o estira el cuerpo.',
    },
    traction: {
      name: 'ayudar a sentarse (tracción)',
      did: 'Tomamos los brazos {names} y, poco a poco, ayudamos a que se sentara. Miramos si doblaba los dos brazos y ayudaba.',
    },
  },
  span({ unit, months, weeks, days }) {
    if (unit === 'months')
      return weeks > 3
        ? `casi ${ofMonths(months + 1)}`
        : weeks > 0
          ? `${ofMonths(months)} y ${ofWeeks(weeks)}`
          : ofMonths(months);
    if (weeks === 0) return days === 0 ? 'menos de 1 día' : ofDays(days);
    return days > 0 ? `${ofWeeks(weeks)} y ${ofDays(days)}` : ofWeeks(weeks);
  },
  when(from, to) {
    if (from.count === to.count && from.unit === to.unit && from.clock === to.clock)
      return to.count < 0 ? placed(to) : `hacia ${placed(to)}`;
    if (from.clock === 'due' && from.count === 0)
      return `entre la fecha probable de parto y ${ofUnit(to.count, to.unit)} después`;
    const isOneClock = from.count > 0 && from.clock === to.clock;
    if (!isOneClock) return `entre ${placed(from)} y ${placed(to)}`;
    const isOneUnit = from.unit === to.unit && from.count > 1;
    const first = isOneUnit ? point(from).replace(/ \p{L}+$/u, '') : point(from);
    return `entre ${first} y ${placed(to)}`;
  },
  times: (count) => counted(count, 'vez', 'veces'),
  show: {
    next: 'Siguiente',
    back: 'Atrás',
    close: 'Cerrar',
    aloud: 'Leer en voz alta',
    quiet: 'Dejar de leer',
    shows: 'Esto es lo que buscamos.',
    move: 'Ver cómo se mueve',
    hold: 'Dejar quieto',
    full: 'Pantalla completa',
    of: (at, all) => `${at} de ${all}`,
  },
  chart: {
    birth: 'nacimiento',
    due: 'fecha probable de parto',
    months: ofMonths,
    today: 'esta visita',
    last: 'última visita',
    shape: 'la forma: cuándo se espera según nuestras guías',
    marks: {
      there: 'está',
      away: 'no está',
      'one-side': 'en un lado',
      'cannot-tell': 'no se sabe',
    },
    fromBirth: 'Según nuestras guías, se ve desde el nacimiento.',
    byDue: 'Según nuestras guías, se ve ya en la fecha probable de parto.',
    comes: 'Según nuestras guías, aparece {when}.',
    comesUnsaid: 'Nuestras guías no dicen cuándo aparece.',
    thenFades: 'Según ellas, desaparece {when}.',
    thenFeeds: 'Según ellas, los bebés ya comen sin esto {when}.',
    thenStays: 'Según ellas, se ve durante años.',
    bandNone: 'Nuestras guías dicen poco de cuándo aparece y cuándo desaparece.',
    seen: '{date}: {mark}.',
  },
};
