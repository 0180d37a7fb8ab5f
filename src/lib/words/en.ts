/** English, whole: the keys every other language has to fill. */
import * as ages from './en/ages.ts';
import * as atlas from './en/atlas.ts';
import * as atlasPages from './en/atlasPages.ts';
import * as attention from './en/attention.ts';
import * as axis from './en/axis.ts';
import * as record from './en/case.ts';
import * as body from './en/body.ts';
import * as chart from './en/chart.ts';
import * as children from './en/children.ts';
import * as course from './en/course.ts';
import * as exchange from './en/exchange.ts';
import * as familyPage from './en/familyPage.ts';
import * as forms from './en/forms.ts';
import * as keeping from './en/keeping.ts';
import * as judge from './en/judge.ts';
import * as lock from './en/lock.ts';
import * as orderPages from './en/orderPages.ts';
import * as ownPages from './en/ownPages.ts';
import * as pages from './en/pages.ts';
import * as problems from './en/problems.ts';
import * as recording from './en/recording.ts';
import * as quiz from './en/quiz.ts';
import * as quizWhy from './en/quizWhy.ts';
import * as quizPages from './en/quizPages.ts';
import * as renewal from './en/renewal.ts';
import * as report from './en/report.ts';
import * as share from './en/share.ts';
import * as sheet from './en/sheet.ts';
import * as sheets from './en/sheets.ts';
import * as table from './en/table.ts';
import * as talks from './en/talks.ts';
import * as takeaway from './en/takeaway.ts';
import * as ui from './en/ui.ts';

export const en = {
  ages,
  atlas,
  atlasPages,
  attention,
  axis,
  body,
  record,
  chart,
  children,
  course,
  exchange,
  familyPage,
  forms,
  keeping,
  judge,
  lock,
  orderPages,
  ownPages,
  pages,
  problems,
  recording,
  takeaway,
  renewal,
  report,
  share,
  sheet,
  sheets,
  table,
  talks,
  quiz,
  quizWhy,
  quizPages,
  ui,
};
