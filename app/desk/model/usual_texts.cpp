#include "app/desk/model/usual_texts.h"

#include "app/desk/model/words.h"

#include <algorithm>
#include <span>

namespace ebbline::deskapp {

namespace {

struct Texts {
    const char* language;
    std::array<const char*, allUsualTexts.size()> texts;  ///< in the order of the enumeration
    const char* number;                                   ///< the clinic's, "%1"
};

constexpr std::array<Texts, 8> catalogue{{
    {"en",
     {"About your dressings: please do as your diary says. If one comes off early, gets wet or is stained, call us. We will tell you what to do.",
      "Please write an entry in your diary today.",
      "We would like to see you before the day that was agreed. Please call us to find a time.",
      "Please call us as soon as you read this. If your diary tells you to call the emergency number, call that first.",
      "Thank you for writing your diary. If it tells you to call, please call at once: do not wait for a message from us."},
     "Our number: %1"},
    {"de",
     {"Zu Ihren Pflastern: Bitte machen Sie es so, wie es in Ihrem Tagebuch steht. Wenn sich eines zu früh löst, nass wird oder Flecken hat, rufen Sie uns an. Wir sagen Ihnen, was zu tun ist.",
      "Bitte schreiben Sie heute einen Eintrag in Ihr Tagebuch.",
      "Wir möchten Sie vor dem vereinbarten Tag sehen. Bitte rufen Sie uns an, um eine Zeit zu finden.",
      "Bitte rufen Sie uns an, sobald Sie das lesen. Wenn Ihr Tagebuch sagt, dass Sie die Notrufnummer anrufen sollen, rufen Sie zuerst dort an.",
      "Danke, dass Sie Ihr Tagebuch führen. Wenn es sagt, dass Sie anrufen sollen, rufen Sie bitte sofort an: Warten Sie nicht auf eine Nachricht von uns."},
     "Unsere Nummer: %1"},
    {"es",
     {"Sobre sus apósitos: haga, por favor, lo que dice su diario. Si uno se suelta antes de tiempo, se moja o se mancha, llámenos. Le diremos qué hacer.",
      "Por favor, escriba hoy una anotación en su diario.",
      "Nos gustaría verle antes del día acordado. Por favor, llámenos para buscar una hora.",
      "Por favor, llámenos en cuanto lea esto. Si su diario le dice que llame al número de emergencias, llame primero ahí.",
      "Gracias por escribir su diario. Si le dice que llame, llame enseguida: no espere un mensaje nuestro."},
     "Nuestro número: %1"},
    {"fr",
     {"Pour vos pansements : suivez ce que dit votre journal, s’il vous plaît. Si l’un se décolle trop tôt, est mouillé ou taché, appelez-nous. Nous vous dirons quoi faire.",
      "Merci d’écrire une note dans votre journal aujourd’hui.",
      "Nous aimerions vous voir avant le jour convenu. Appelez-nous, s’il vous plaît, pour trouver une heure.",
      "Appelez-nous dès que vous lisez ceci, s’il vous plaît. Si votre journal vous dit d’appeler le numéro d’urgence, appelez-le d’abord.",
      "Merci de tenir votre journal. S’il vous dit d’appeler, appelez tout de suite : n’attendez pas un message de notre part."},
     "Notre numéro : %1"},
    {"pt_BR",
     {"Sobre os seus curativos: por favor, faça o que diz o seu diário. Se um deles se soltar antes da hora, molhar ou manchar, ligue para nós. Vamos dizer o que fazer.",
      "Por favor, escreva hoje uma anotação no seu diário.",
      "Gostaríamos de ver você antes do dia combinado. Por favor, ligue para nós para marcar um horário.",
      "Por favor, ligue para nós assim que ler isto. Se o seu diário disser para ligar para o número de emergência, ligue primeiro para lá.",
      "Obrigado por escrever o seu diário. Se ele disser para ligar, ligue na hora: não espere uma mensagem nossa."},
     "Nosso número: %1"},
    {"tr",
     {"Pansumanlarınız hakkında: lütfen günlüğünüzün söylediğini yapın. Biri erken çıkarsa, ıslanırsa ya da lekelenirse bizi arayın. Ne yapacağınızı söyleriz.",
      "Lütfen bugün günlüğünüze bir kayıt yazın.",
      "Sizi kararlaştırılan günden önce görmek istiyoruz. Saat belirlemek için lütfen bizi arayın.",
      "Lütfen bunu okur okumaz bizi arayın. Günlüğünüz acil numarayı aramanızı söylüyorsa önce orayı arayın.",
      "Günlüğünüzü yazdığınız için teşekkürler. Aramanızı söylerse hemen arayın: bizden mesaj beklemeyin."},
     "Numaramız: %1"},
    {"ar",
     {"بخصوص ضماداتك: من فضلك افعل ما تقوله يومياتك. إذا سقط أحدها مبكرًا أو ابتلّ أو اتّسخ فاتصل بنا، وسنخبرك بما يجب فعله.",
      "من فضلك اكتب اليوم تسجيلًا في يومياتك.",
      "نودّ أن نراك قبل اليوم المتفق عليه. من فضلك اتصل بنا لتحديد موعد.",
      "من فضلك اتصل بنا فور قراءة هذه الرسالة. إذا طلبت منك يومياتك الاتصال برقم الطوارئ فاتصل به أولًا.",
      "شكرًا لكتابتك في يومياتك. إذا طلبت منك الاتصال فاتصل فورًا: لا تنتظر رسالة منا."},
     "رقمنا: %1"},
    {"zh_CN",
     {"关于您的敷料：请按日记上的说明做。如果敷料提前脱落、弄湿或有污渍，请给我们打电话。我们会告诉您怎么做。",
      "请今天在日记中写一条记录。",
      "我们希望在约定的日子之前见到您。请给我们打电话，商定时间。",
      "请您一看到这条消息就给我们打电话。如果日记让您拨打急救电话，请先打急救电话。",
      "感谢您写日记。如果日记让您打电话，请马上打：不要等我们的消息。"},
     "我们的电话：%1"},
}};

bool asksToCall(UsualText text)
{
    return text == UsualText::dressings || text == UsualText::comeEarlier || text == UsualText::callUs;
}

}  // namespace

QString usualText(UsualText text, const QString& language, const std::string& clinicPhone)
{
    const auto found = std::ranges::find_if(catalogue, [&](const Texts& each) { return language == QLatin1String(each.language); });
    if (found == catalogue.end()) {
        return {};
    }
    QString words = QString::fromUtf8(found->texts[static_cast<std::size_t>(text)]);
    if (asksToCall(text) && !clinicPhone.empty()) {
        words += u'\n' + QString::fromUtf8(found->number).arg(leftToRight(clinicPhone));
    }
    return words;
}

QString diaryLanguageOf(const std::string& registered)
{
    const auto code = QString::fromStdString(registered).replace(u'-', u'_');
    const auto spoken = diaryLanguages();
    const auto near = nearestLanguage(code, spoken);
    return near.section(u'_', 0, 0) == code.section(u'_', 0, 0) ? near : QString();
}

}  // namespace ebbline::deskapp
