import type { Unread } from '../../core/language/tongue/tongues.ts';

/** What is said to somebody whose language is not read. Buttons say it in English as well. */
interface ForeignWords {
  /** That only English is read, and to write in simple English. */
  readonly reads: string;
  readonly emergency: string;
  readonly hurt: string;
  readonly urgent: string;
  readonly dose: string;
  readonly salinity: string;
  readonly changes: string;
}

export const foreignWords: Readonly<Record<Unread, ForeignWords>> = {
  danish: {
    reads: 'Beklager, jeg kan kun læse engelsk: Skriv venligst dit spørgsmål på enkelt engelsk.',
    emergency: 'Er nogen kommet til skade eller forgiftet, så ring straks til dit alarmnummer.',
    hurt: 'Nogen er kommet til skade',
    urgent: 'Nødsituation i akvariet',
    dose: 'Dosering',
    salinity: 'Omregn saltholdighed',
    changes: 'Vandskift',
  },
  dutch: {
    reads: 'Sorry, ik kan alleen Engels lezen: schrijf je vraag alsjeblieft in eenvoudig Engels.',
    emergency: 'Is er iemand gewond of vergiftigd, bel dan meteen je alarmnummer.',
    hurt: 'Er is iemand gewond',
    urgent: 'Noodgeval in het aquarium',
    dose: 'Dosering',
    salinity: 'Zoutgehalte omrekenen',
    changes: 'Water verversen',
  },
  french: {
    reads: 'Désolé, je ne lis que l’anglais : merci d’écrire votre question en anglais simple.',
    emergency: 'Si quelqu’un est blessé ou intoxiqué, appelez tout de suite votre numéro d’urgence.',
    hurt: 'Quelqu’un est blessé',
    urgent: 'Urgence dans l’aquarium',
    dose: 'Dosage',
    salinity: 'Convertir la salinité',
    changes: 'Changements d’eau',
  },
  german: {
    reads: 'Es tut mir leid, ich kann nur Englisch lesen: Bitte schreib deine Frage in einfachem Englisch.',
    emergency: 'Ist jemand verletzt oder vergiftet, ruf sofort deine Notrufnummer an.',
    hurt: 'Jemand ist verletzt',
    urgent: 'Notfall im Aquarium',
    dose: 'Dosierung',
    salinity: 'Salzgehalt umrechnen',
    changes: 'Wasserwechsel',
  },
  italian: {
    reads: 'Mi dispiace, leggo solo l’inglese: per favore, scrivi la tua domanda in un inglese semplice.',
    emergency: 'Se qualcuno è ferito o intossicato, chiama subito il tuo numero di emergenza.',
    hurt: 'Qualcuno è ferito',
    urgent: 'Emergenza nell’acquario',
    dose: 'Dosaggio',
    salinity: 'Convertire la salinità',
    changes: 'Cambi d’acqua',
  },
  polish: {
    reads: 'Przepraszam, czytam tylko po angielsku: proszę napisać pytanie prostym angielskim.',
    emergency: 'Jeśli ktoś jest ranny lub zatruty, proszę natychmiast zadzwonić pod numer alarmowy.',
    hurt: 'Ktoś jest ranny',
    urgent: 'Nagły problem w akwarium',
    dose: 'Dawka',
    salinity: 'Przelicz zasolenie',
    changes: 'Podmiany wody',
  },
  portuguese: {
    reads: 'Desculpe, eu leio apenas inglês: por favor, escreva a sua pergunta em inglês simples.',
    emergency: 'Se alguém estiver ferido ou intoxicado, ligue imediatamente para o seu número de emergência.',
    hurt: 'Alguém está ferido',
    urgent: 'Emergência no aquário',
    dose: 'Dosagem',
    salinity: 'Converter a salinidade',
    changes: 'Trocas de água',
  },
  spanish: {
    reads: 'Lo siento, solo leo inglés: por favor, escribe tu pregunta en un inglés sencillo.',
    emergency: 'Si alguien está herido o intoxicado, llama de inmediato a tu número de emergencias.',
    hurt: 'Hay alguien herido',
    urgent: 'Emergencia en el acuario',
    dose: 'Dosis',
    salinity: 'Convertir la salinidad',
    changes: 'Cambios de agua',
  },
  other: {
    reads: 'Sorry, I read English only: please write your question in simple English.',
    emergency: 'If somebody is hurt or poisoned, call your emergency number.',
    hurt: '',
    urgent: '',
    dose: '',
    salinity: '',
    changes: '',
  },
};
