<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ar" sourcelanguage="en">
    <context>
        <name>plan</name>
        <message>
            <source>'corner_and_chair'</source>
            <comment>'corner_and_chair'</comment>
            <translation>«ركن وكرسي ثابت»</translation>
        </message>
        <message>
            <source>'helper'</source>
            <comment>'helper'</comment>
            <translation>«مساعد في متناول الذراع»</translation>
        </message>
        <message>
            <source>'none'</source>
            <comment>'none'</comment>
            <translation>«لا شيء»</translation>
        </message>
        <message>
            <source>Bohannon RW 2006, Percept Mot Skills 103:215: the time of five stands</source>
            <comment>Bohannon RW 2006, Percept Mot Skills 103:215: the time of five stands</comment>
            <translation>⁦Bohannon RW 2006, Percept Mot Skills 103:215⁩: زمن خمس مرات وقوف</translation>
        </message>
        <message>
            <source>Cawthorne-Cooksey set: a finger between 91 and 30 cm; the dose is common practice</source>
            <comment>Cawthorne-Cooksey set: a finger between 91 and 30 cm; the dose is common practice</comment>
            <translation>مجموعة ⁦Cawthorne-Cooksey⁩: إصبع بين 91 و30 سم؛ الجرعة ممارسة شائعة</translation>
        </message>
        <message>
            <source>Cohen HS group, JoVE 2023, doi:10.3791/65663: head movements cued at 0.3 Hz</source>
            <comment>Cohen HS group, JoVE 2023, doi:10.3791/65663: head movements cued at 0.3 Hz</comment>
            <translation>مجموعة Cohen HS، ⁦JoVE 2023, doi:10.3791/65663⁩: حركات الرأس بإيقاع 0.3 هرتز</translation>
        </message>
        <message>
            <source>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted</source>
            <comment>Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted</comment>
            <translation>⁦Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382⁩، كما نُقل</translation>
        </message>
        <message>
            <source>Mersey Care NHS leaflet 'Dizziness, vertigo, imbalance'</source>
            <comment>Mersey Care NHS leaflet 'Dizziness, vertigo, imbalance'</comment>
            <translation>نشرة ⁦Mersey Care NHS⁩ ‏«⁦Dizziness, vertigo, imbalance⁩»</translation>
        </message>
        <message>
            <source>Schubert MC et al. 2008, J Vestib Res 18:147-157, for the exercise; the dose is common practice</source>
            <comment>Schubert MC et al. 2008, J Vestib Res 18:147-157, for the exercise; the dose is common practice</comment>
            <translation>⁦Schubert MC et al. 2008, J Vestib Res 18:147-157⁩ للتمرين؛ الجرعة ممارسة شائعة</translation>
        </message>
        <message>
            <source>US CDC STEADI 2017, four-stage balance test: 10 s a stance</source>
            <comment>US CDC STEADI 2017, four-stage balance test: 10 s a stance</comment>
            <translation>⁦US CDC STEADI 2017⁩، اختبار التوازن بأربع مراحل: 10 ث لكل وضع</translation>
        </message>
        <message>
            <source>US CDC STEADI, 30-second chair stand: 43 cm (17 inch) chair, arms crossed</source>
            <comment>US CDC STEADI, 30-second chair stand: 43 cm (17 inch) chair, arms crossed</comment>
            <translation>⁦US CDC STEADI⁩، الوقوف من الكرسي خلال 30 ثانية: كرسي بارتفاع 43 سم (17 بوصة)، والذراعان متقاطعتان</translation>
        </message>
        <message>
            <source>WCAG 2.3.1: at most three flashes in any second; the dose is common practice</source>
            <comment>WCAG 2.3.1: at most three flashes in any second; the dose is common practice</comment>
            <translation>⁦WCAG 2.3.1⁩: ثلاث ومضات على الأكثر في أي ثانية؛ الجرعة ممارسة شائعة</translation>
        </message>
        <message>
            <source>a bilateral loss</source>
            <comment>a bilateral loss</comment>
            <translation>فقد في الجهتين</translation>
        </message>
        <message>
            <source>a chronic loss</source>
            <comment>a chronic loss</comment>
            <translation>فقد مزمن</translation>
        </message>
        <message>
            <source>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each</source>
            <comment>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each</comment>
            <translation>صيغة من مجموعة ⁦Cawthorne-Cooksey⁩ في نص لطب المسنين، 20 مرة لكل منها</translation>
        </message>
        <message>
            <source>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each; ten with each arm is common practice</source>
            <comment>a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each; ten with each arm is common practice</comment>
            <translation>صيغة من مجموعة ⁦Cawthorne-Cooksey⁩ في نص لطب المسنين، 20 مرة لكل منها؛ عشر بكل ذراع ممارسة شائعة</translation>
        </message>
        <message>
            <source>a head shake is no part of it</source>
            <comment>a head shake is no part of it</comment>
            <translation>هز الرأس ليس جزءًا منه</translation>
        </message>
        <message>
            <source>a moving background can bring on strong symptoms and is off unless you want it; say what it is for</source>
            <comment>a moving background can bring on strong symptoms and is off unless you want it; say what it is for</comment>
            <translation>الخلفية المتحركة قد تثير أعراضًا قوية وهي متوقفة ما لم تردها؛ اكتب لأي غرض هي</translation>
        </message>
        <message>
            <source>an acute loss</source>
            <comment>an acute loss</comment>
            <translation>فقد حاد</translation>
        </message>
        <message>
            <source>common practice</source>
            <comment>common practice</comment>
            <translation>ممارسة شائعة</translation>
        </message>
        <message>
            <source>common practice, for room above and below; throws in rendered films were counted from there</source>
            <comment>common practice, for room above and below; throws in rendered films were counted from there</comment>
            <translation>ممارسة شائعة، لترك مساحة فوق وتحت؛ عُدّت الرميات من هناك في أفلام مولّدة</translation>
        </message>
        <message>
            <source>common practice: an arm held out doesn't reach the screen</source>
            <comment>common practice: an arm held out doesn't reach the screen</comment>
            <translation>ممارسة شائعة: الذراع الممدودة لا تصل إلى الشاشة</translation>
        </message>
        <message>
            <source>common practice; also the length of a trial in the sensory-interaction balance test</source>
            <comment>common practice; also the length of a trial in the sensory-interaction balance test</comment>
            <translation>ممارسة شائعة؛ وهي أيضًا مدة المحاولة في اختبار التوازن لتفاعل الحواس</translation>
        </message>
        <message>
            <source>common practice; at most 20 degrees a second, below the 30 from which eyes need jumps to keep up (encyclopaedic text)</source>
            <comment>common practice; at most 20 degrees a second, below the 30 from which eyes need jumps to keep up (encyclopaedic text)</comment>
            <translation>ممارسة شائعة؛ 20 درجة في الثانية على الأكثر، دون 30 التي تحتاج العينان بعدها إلى قفزات للمتابعة (نص موسوعي)</translation>
        </message>
        <message>
            <source>common practice; published handouts name 20 to 45 degrees to each side</source>
            <comment>common practice; published handouts name 20 to 45 degrees to each side</comment>
            <translation>ممارسة شائعة؛ النشرات المطبوعة تذكر 20 إلى 45 درجة إلى كل جهة</translation>
        </message>
        <message>
            <source>counted: gaze</source>
            <comment>counted: gaze</comment>
            <translation>يُعدّ من النظر</translation>
        </message>
        <message>
            <source>counted: hand, else vergence</source>
            <comment>counted: hand, else vergence</comment>
            <translation>يُعدّ من اليد، وإلا فمن تقارب العينين</translation>
        </message>
        <message>
            <source>counted: hands</source>
            <comment>counted: hands</comment>
            <translation>يُعدّ من اليدين</translation>
        </message>
        <message>
            <source>counted: head in bends</source>
            <comment>counted: head in bends</comment>
            <translation>يُعدّ من الرأس عند الانحناء</translation>
        </message>
        <message>
            <source>counted: head in rises</source>
            <comment>counted: head in rises</comment>
            <translation>يُعدّ من الرأس عند الوقوف</translation>
        </message>
        <message>
            <source>counted: head pitch</source>
            <comment>counted: head pitch</comment>
            <translation>يُعدّ من حركة الرأس أعلى وأسفل</translation>
        </message>
        <message>
            <source>counted: head tilt</source>
            <comment>counted: head tilt</comment>
            <translation>يُعدّ من إمالة الرأس</translation>
        </message>
        <message>
            <source>counted: head yaw</source>
            <comment>counted: head yaw</comment>
            <translation>يُعدّ من استدارة الرأس</translation>
        </message>
        <message>
            <source>counted: neck point fore and aft</source>
            <comment>counted: neck point fore and aft</comment>
            <translation>يُعدّ من نقطة الرقبة، إلى الأمام والخلف</translation>
        </message>
        <message>
            <source>counted: neck point sideways</source>
            <comment>counted: neck point sideways</comment>
            <translation>يُعدّ من نقطة الرقبة، إلى الجانبين</translation>
        </message>
        <message>
            <source>counted: shoulders</source>
            <comment>counted: shoulders</comment>
            <translation>يُعدّ من الكتفين</translation>
        </message>
        <message>
            <source>the baseline rule needs the most rise that is allowed (baseline_rise_most)</source>
            <comment>finding.baseline_rise</comment>
            <translation>قاعدة القيمة الأولى تحتاج أيضًا إلى الارتفاع المسموح به</translation>
        </message>
        <message>
            <source>a bilateral loss has both sides affected</source>
            <comment>finding.bilateral_side</comment>
            <translation>في فقد الجهتين تكون الجهتان مصابتين</translation>
        </message>
        <message>
            <source>must be true or false</source>
            <comment>finding.bool_type</comment>
            <translation>يجب أن يكون نعم أو لا</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_from_datetime_parsing</comment>
            <translation>يجب أن يكون يومًا مثل ⁦2026-01-31⁩</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_parsing</comment>
            <translation>يجب أن يكون يومًا مثل ⁦2026-01-31⁩</translation>
        </message>
        <message>
            <source>must be a day as in 2026-01-31</source>
            <comment>finding.date_type</comment>
            <translation>يجب أن يكون يومًا مثل ⁦2026-01-31⁩</translation>
        </message>
        <message>
            <source>{exercise} is not measured in degrees: the range is passed over</source>
            <comment>finding.degrees_passed_over</comment>
            <translation>لا يُقاس {exercise} بالدرجات: يُتجاهل المدى</translation>
        </message>
        <message>
            <source>no entry is in stage {name}</source>
            <comment>finding.empty_stage</comment>
            <translation>لا يوجد بند في المرحلة {name}</translation>
        </message>
        <message>
            <source>is not a field of a plan; see 'turnpost schema plan'</source>
            <comment>finding.extra_forbidden</comment>
            <translation>ليس حقلًا من حقول الخطة؛ انظر «turnpost schema plan»</translation>
        </message>
        <message>
            <source>{exercise} is done with the eyes closed</source>
            <comment>finding.eyes_closed</comment>
            <translation>يُؤدى {exercise} والعينان مغمضتان</translation>
        </message>
        <message>
            <source>{exercise} at {most} beats a minute is fast: its usual pace is about {own}</source>
            <comment>finding.fast</comment>
            <translation>إيقاع {exercise} سريع: {most} من النقرات في الدقيقة، والمعتاد نحو {own}</translation>
        </message>
        <message>
            <source>figures need the entry or stage they are taken from (after)</source>
            <comment>finding.figures_of_what</comment>
            <translation>تحتاج القيم إلى البند أو المرحلة التي تأتي منها</translation>
        </message>
        <message>
            <source>must be a finite number</source>
            <comment>finding.finite_number</comment>
            <translation>يجب أن يكون عددًا منتهيًا</translation>
        </message>
        <message>
            <source>must be a number</source>
            <comment>finding.float_type</comment>
            <translation>يجب أن يكون عددًا</translation>
        </message>
        <message>
            <source>must be more than {gt}</source>
            <comment>finding.greater_than</comment>
            <translation>يجب أن يكون أكثر من {gt}</translation>
        </message>
        <message>
            <source>must be {ge} or more</source>
            <comment>finding.greater_than_equal</comment>
            <translation>يجب أن يكون {ge} أو أكثر</translation>
        </message>
        <message>
            <source>at least {least} for {loss} ({source})</source>
            <comment>finding.guideline_least</comment>
            <translation>{least} على الأقل عند {loss} ({source})</translation>
        </message>
        <message>
            <source>the guideline names no figure for this kind of loss</source>
            <comment>finding.guideline_none</comment>
            <translation>لا تذكر الإرشادات رقمًا لهذا النوع من الفقد</translation>
        </message>
        <message>
            <source>{least} to {most} for {loss} ({source})</source>
            <comment>finding.guideline_range</comment>
            <translation>من {least} إلى {most} عند {loss} ({source})</translation>
        </message>
        <message>
            <source>{exercise} is done with a head shake</source>
            <comment>finding.head_shake</comment>
            <translation>يُؤدى {exercise} مع هز الرأس</translation>
        </message>
        <message>
            <source>{exercise} is held: give seconds</source>
            <comment>finding.held_seconds</comment>
            <translation>{exercise} يُثبَّت: اكتب الثواني</translation>
        </message>
        <message>
            <source>{exercise} is held: it has no tempo</source>
            <comment>finding.held_tempo</comment>
            <translation>{exercise} يُثبَّت: ليس له إيقاع</translation>
        </message>
        <message>
            <source>changes nothing: give a tempo (tempo_bpm) or a range (amplitude_deg)</source>
            <comment>finding.idle_rung</comment>
            <translation>لا يغير شيئًا: اكتب الإيقاع أو المدى</translation>
        </message>
        <message>
            <source>must be a whole number</source>
            <comment>finding.int_from_float</comment>
            <translation>يجب أن يكون عددًا صحيحًا</translation>
        </message>
        <message>
            <source>must be a whole number</source>
            <comment>finding.int_type</comment>
            <translation>يجب أن يكون عددًا صحيحًا</translation>
        </message>
        <message>
            <source>there are keys, so nothing is handed over plain</source>
            <comment>finding.keys_and_plain</comment>
            <translation>توجد مفاتيح، فلا يُسلَّم شيء مكشوفًا</translation>
        </message>
        <message>
            <source>must be later than the rung before</source>
            <comment>finding.later_rung</comment>
            <translation>يجب أن يكون بعد الدرجة السابقة</translation>
        </message>
        <message>
            <source>the least comes first, then the most</source>
            <comment>finding.least_first</comment>
            <translation>الأقل أولًا، ثم الأكثر</translation>
        </message>
        <message>
            <source>must be {le} or less</source>
            <comment>finding.less_than_equal</comment>
            <translation>يجب أن يكون {le} أو أقل</translation>
        </message>
        <message>
            <source>must be a list in [ ]</source>
            <comment>finding.list_type</comment>
            <translation>يجب أن يكون قائمة</translation>
        </message>
        <message>
            <source>must be {expected}</source>
            <comment>finding.literal_error</comment>
            <translation>يجب أن يكون واحدًا من هذه: {expected}</translation>
        </message>
        <message>
            <source>takes about {minutes} minutes, more than {most}</source>
            <comment>finding.long_stage</comment>
            <translation>تستغرق نحو {minutes} من الدقائق، أكثر من {most}</translation>
        </message>
        <message>
            <source>is missing</source>
            <comment>finding.missing</comment>
            <translation>ناقص</translation>
        </message>
        <message>
            <source>is misspelt: its check letters don't fit</source>
            <comment>finding.misspelt_key</comment>
            <translation>مكتوب خطأ: أحرف التحقق لا تتطابق</translation>
        </message>
        <message>
            <source>must be fields in {{ }}</source>
            <comment>finding.model_attributes_type</comment>
            <translation>يجب أن يتكون من حقول</translation>
        </message>
        <message>
            <source>must be fields in {{ }}</source>
            <comment>finding.model_type</comment>
            <translation>يجب أن يتكون من حقول</translation>
        </message>
        <message>
            <source>{given} can't be used here (letters, digits, . _ - only)</source>
            <comment>finding.name</comment>
            <translation>لا يصلح {given} هنا (حروف لاتينية وأرقام و . _ - فقط)</translation>
        </message>
        <message>
            <source>{name} is the name of a stage already</source>
            <comment>finding.name_of_stage</comment>
            <translation>{name} اسم لمرحلة من قبل</translation>
        </message>
        <message>
            <source>nearer than the usual {usual} mm</source>
            <comment>finding.near_seat</comment>
            <translation>أقرب من المعتاد {usual} مم</translation>
        </message>
        <message>
            <source>asks for up to {most} degrees, beyond the neck limit of {limit}</source>
            <comment>finding.neck</comment>
            <translation>يطلب حتى {most} من الدرجات، أكثر من حد الرقبة {limit}</translation>
        </message>
        <message>
            <source>{exercise} {how} is not given: {why}</source>
            <comment>finding.never</comment>
            <translation>{exercise} {how} غير متاح: {why}</translation>
        </message>
        <message>
            <source>{exercise} is not measured in degrees</source>
            <comment>finding.no_degrees</comment>
            <translation>لا يُقاس {exercise} بالدرجات</translation>
        </message>
        <message>
            <source>none is set: the program can only say 'call for help'</source>
            <comment>finding.no_emergency_number</comment>
            <translation>لم يُكتب رقم: لا يستطيع البرنامج إلا أن يقول اطلب المساعدة</translation>
        </message>
        <message>
            <source>needs keys, or plain set to true knowingly</source>
            <comment>finding.no_keys</comment>
            <translation>يحتاج إلى مفاتيح، أو إلى اختيار التسليم المكشوف عن علم</translation>
        </message>
        <message>
            <source>no pseudonym is set: nobody can tell whose sessions are handed over</source>
            <comment>finding.no_person</comment>
            <translation>لا يوجد اسم مستعار: لا يستطيع أحد أن يعرف لمن الجلسات المسلَّمة</translation>
        </message>
        <message>
            <source>{exercise} asks for no range, so that nothing is held to the neck limit of {limit} degrees: give one</source>
            <comment>finding.no_range</comment>
            <translation>لا يطلب {exercise} مدى، فلا يقارن فيه شيء بحد الرقبة {limit} من الدرجات: حدّد مدى</translation>
        </message>
        <message>
            <source>how far the head is shaken while {exercise} is held is not watched, whatever the neck limit of {limit} degrees</source>
            <comment>finding.no_range_held</comment>
            <translation>لا يُراقب مدى هز الرأس أثناء {exercise}، مع أن حد الرقبة {limit} من الدرجات</translation>
        </message>
        <message>
            <source>there is no stage {name} in this plan</source>
            <comment>finding.no_stage</comment>
            <translation>لا توجد في هذه الخطة مرحلة {name}</translation>
        </message>
        <message>
            <source>{exercise} can't be done with marks on the wall</source>
            <comment>finding.no_wall</comment>
            <translation>لا يمكن أداء {exercise} بعلامات على الجدار</translation>
        </message>
        <message>
            <source>none is set</source>
            <comment>finding.none_set</comment>
            <translation>لم يُكتب شيء</translation>
        </message>
        <message>
            <source>{name} is no entry or stage further up in this plan</source>
            <comment>finding.not_before</comment>
            <translation>{name} ليس بندًا ولا مرحلة أعلى في هذه الخطة</translation>
        </message>
        <message>
            <source>not everything is ticked: only what the seated starter has will be offered</source>
            <comment>finding.not_cleared</comment>
            <translation>لم توضع علامة على كل شيء: لن يُعرض إلا ما في البداية مع الجلوس</translation>
        </message>
        <message>
            <source>{exercise} needs a note: {why}</source>
            <comment>finding.note_needed</comment>
            <translation>يحتاج {exercise} إلى ملاحظة: {why}</translation>
        </message>
        <message>
            <source>a note is asked for with {exercise}: {why}</source>
            <comment>finding.note_wanted</comment>
            <translation>تُطلب ملاحظة مع {exercise}: {why}</translation>
        </message>
        <message>
            <source>{exercise} has one mark: leave out the distance from mark to mark</source>
            <comment>finding.one_mark</comment>
            <translation>لتمرين {exercise} علامة واحدة: احذف المسافة من علامة إلى علامة</translation>
        </message>
        <message>
            <source>{text}</source>
            <comment>finding.other</comment>
            <translation>{text}</translation>
        </message>
        <message>
            <source>sessions are handed over unencrypted</source>
            <comment>finding.plain</comment>
            <translation>تُسلَّم الجلسات دون تشفير</translation>
        </message>
        <message>
            <source>is no public key of the format age (age1 and 58 more letters)</source>
            <comment>finding.public_key</comment>
            <translation>ليس مفتاحًا عامًا بصيغة age ‏(age1 و58 حرفًا آخر)</translation>
        </message>
        <message>
            <source>is missing, as this plan has stages</source>
            <comment>finding.stage_missing</comment>
            <translation>ناقصة، لأن لهذه الخطة مراحل</translation>
        </message>
        <message>
            <source>is longer than {max_length} characters</source>
            <comment>finding.string_too_long</comment>
            <translation>أطول من {max_length} من الأحرف</translation>
        </message>
        <message>
            <source>must not be empty</source>
            <comment>finding.string_too_short</comment>
            <translation>يجب ألا يكون فارغًا</translation>
        </message>
        <message>
            <source>must be a text in quotes</source>
            <comment>finding.string_type</comment>
            <translation>يجب أن يكون نصًا</translation>
        </message>
        <message>
            <source>{exercise} ({how}) needs the support {least}</source>
            <comment>finding.support</comment>
            <translation>يحتاج {exercise} ({how}) إلى السند {least}</translation>
        </message>
        <message>
            <source>must be a telephone number</source>
            <comment>finding.telephone</comment>
            <translation>يجب أن يكون رقم هاتف</translation>
        </message>
        <message>
            <source>{exercise} goes at {most} beats a minute at most</source>
            <comment>finding.tempo_to_follow</comment>
            <translation>إيقاع {exercise} على الأكثر {most} من النقرات في الدقيقة</translation>
        </message>
        <message>
            <source>has more than {max_length} parts</source>
            <comment>finding.too_long</comment>
            <translation>فيه أكثر من {max_length} من الأجزاء</translation>
        </message>
        <message>
            <source>must not be empty</source>
            <comment>finding.too_short</comment>
            <translation>يجب ألا يكون فارغًا</translation>
        </message>
        <message>
            <source>must be a pair, [from, to]</source>
            <comment>finding.tuple_type</comment>
            <translation>يجب أن يكون زوجًا، من وإلى</translation>
        </message>
        <message>
            <source>stands there twice</source>
            <comment>finding.twice</comment>
            <translation>مذكور مرتين</translation>
        </message>
        <message>
            <source>give repetitions or seconds, not both</source>
            <comment>finding.two_doses</comment>
            <translation>اكتب المرات أو الثواني، لا كليهما</translation>
        </message>
        <message>
            <source>there are two entries {name}</source>
            <comment>finding.two_entries</comment>
            <translation>يوجد بندان باسم {name}</translation>
        </message>
        <message>
            <source>there are two stages {name}</source>
            <comment>finding.two_stages</comment>
            <translation>توجد مرحلتان باسم {name}</translation>
        </message>
        <message>
            <source>would lie {angle} degrees above or below the camera: {most} mm at most from this far away</source>
            <comment>finding.wall_above</comment>
            <translation>ستكون على {angle} من الدرجات فوق الكاميرا أو تحتها: من هذا البعد {most} مم على الأكثر</translation>
        </message>
        <message>
            <source>the marks would lie {angle} degrees to each side: from this far away they must be {least} to {most} mm apart</source>
            <comment>finding.wall_angle</comment>
            <translation>ستكون العلامتان على {angle} من الدرجات إلى كل جانب: من هذا البعد يجب أن تفصل بينهما مسافة من {least} إلى {most} مم</translation>
        </message>
        <message>
            <source>must be {most} mm at most: farther off, no marks will do</source>
            <comment>finding.wall_far</comment>
            <translation>يجب ألا يزيد على {most} مم: أبعد من ذلك لا تصلح أي علامة</translation>
        </message>
        <message>
            <source>the marks ask for more than the neck limit of {limit} degrees: {most} mm apart at most from this far away</source>
            <comment>finding.wall_neck</comment>
            <translation>تطلب العلامتان أكثر من حد الرقبة {limit} من الدرجات: من هذا البعد {most} مم بينهما على الأكثر</translation>
        </message>
        <message>
            <source>would lie {angle} degrees to the side of the camera: {most} mm at most from this far away</source>
            <comment>finding.wall_right</comment>
            <translation>ستكون على {angle} من الدرجات إلى جانب الكاميرا: من هذا البعد {most} مم على الأكثر</translation>
        </message>
        <message>
            <source>{exercise} with the eyes closed can't be done with marks on the wall</source>
            <comment>finding.wall_shut</comment>
            <translation>لا يمكن أداء {exercise} والعينان مغمضتان بعلامات على الجدار</translation>
        </message>
        <message>
            <source>the range or the neck limit leaves {most} degrees to each side, too little for two marks on the wall: they need {least} at least</source>
            <comment>finding.wall_small</comment>
            <translation>يترك المدى أو حد الرقبة {most} من الدرجات إلى كل جانب، وهذا أقل مما تحتاجه علامتان على الحائط: {least} على الأقل</translation>
        </message>
        <message>
            <source>must be {least} to {most} mm, or no distance from the wall fits it</source>
            <comment>finding.wall_spacing</comment>
            <translation>يجب أن تكون من {least} إلى {most} مم، وإلا فلا بُعد عن الجدار يناسبها</translation>
        </message>
        <message>
            <source>counts weeks, but the day it begins on is not set (starts_on)</source>
            <comment>finding.weeks_from_when</comment>
            <translation>يعدّ الأسابيع، لكن اليوم الأول لم يُكتب</translation>
        </message>
        <message>
            <source>held, timed</source>
            <comment>held, timed</comment>
            <translation>يُثبَّت، بالزمن</translation>
        </message>
        <message>
            <source>it is done on a firm floor</source>
            <comment>it is done on a firm floor</comment>
            <translation>يُؤدى على أرض ثابتة</translation>
        </message>
        <message>
            <source>it is done with the eyes open</source>
            <comment>it is done with the eyes open</comment>
            <translation>يُؤدى والعينان مفتوحتان</translation>
        </message>
        <message>
            <source>it is not done sitting</source>
            <comment>it is not done sitting</comment>
            <translation>لا يُؤدى جلوسًا</translation>
        </message>
        <message>
            <source>it is not done standing</source>
            <comment>it is not done standing</comment>
            <translation>لا يُؤدى وقوفًا</translation>
        </message>
        <message>
            <source>it is not done walking</source>
            <comment>it is not done walking</comment>
            <translation>لا يُؤدى مشيًا</translation>
        </message>
        <message>
            <source>led, not counted</source>
            <comment>led, not counted</comment>
            <translation>موجَّه، لا يُعدّ</translation>
        </message>
        <message>
            <source>never while tossing, walking, on stairs or with a partner</source>
            <comment>never while tossing, walking, on stairs or with a partner</comment>
            <translation>أبدًا عند الرمي أو المشي أو على الدرج أو مع شريك</translation>
        </message>
        <message>
            <source>on a soft surface</source>
            <comment>on a soft surface</comment>
            <translation>على سطح لين</translation>
        </message>
        <message>
            <source>rendered films: from 56 cm whoever sits up half-way is below the picture, from 90 seen</source>
            <comment>rendered films: from 56 cm whoever sits up half-way is below the picture, from 90 seen</comment>
            <translation>أفلام مولَّدة: من اعتدل نصف اعتدال يكون أسفل الصورة من بعد 56 سم، ويُرى من بعد 90</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>sitting</comment>
            <translation>جالسًا</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>standing</comment>
            <translation>واقفًا</translation>
        </message>
        <message>
            <source>the guideline advises against eye movements with a still head as gaze stabilisation (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted); say what this one is for</source>
            <comment>the guideline advises against eye movements with a still head as gaze stabilisation (Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382, as quoted); say what this one is for</comment>
            <translation>توصي الإرشادات بعدم استخدام حركات العينين مع ثبات الرأس لتثبيت النظر (⁦Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, doi:10.1097/NPT.0000000000000382⁩، كما نُقل)؛ اكتب لأي غرض هذا التمرين</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>walking</comment>
            <translation>ماشيًا</translation>
        </message>
        <message>
            <source>with a head shake</source>
            <comment>with a head shake</comment>
            <translation>مع هز الرأس</translation>
        </message>
        <message>
            <source>with the eyes closed</source>
            <comment>with the eyes closed</comment>
            <translation>بعينين مغمضتين</translation>
        </message>
    </context>
    <context>
        <name>trade</name>
        <message>
            <source>30-second chair stand</source>
            <comment>30-second chair stand</comment>
            <translation>القيام عن الكرسي 30 ثانية</translation>
        </message>
        <message>
            <source>30-second chair stand: 43 cm chair, arms crossed, as many as is safe</source>
            <comment>30-second chair stand: 43 cm chair, arms crossed, as many as is safe</comment>
            <translation>القيام 30 ثانية: كرسي 43 سم، الذراعان متقاطعتان، بقدر ما هو آمن</translation>
        </message>
        <message>
            <source>95 % below</source>
            <comment>95 % below</comment>
            <translation>95 % دونه</translation>
        </message>
        <message>
            <source>Active head pitch with the gaze following</source>
            <comment>Active head pitch with the gaze following</comment>
            <translation>تحريك الرأس إلى أعلى وأسفل مع النظر</translation>
        </message>
        <message>
            <source>Active head pitch with the gaze following (habituation)</source>
            <comment>Active head pitch with the gaze following (habituation)</comment>
            <translation>تحريك الرأس إلى أعلى وأسفل مع النظر (تعويد)</translation>
        </message>
        <message>
            <source>Active head yaw with the gaze following</source>
            <comment>Active head yaw with the gaze following</comment>
            <translation>إدارة الرأس مع النظر</translation>
        </message>
        <message>
            <source>Active head yaw with the gaze following (habituation)</source>
            <comment>Active head yaw with the gaze following (habituation)</comment>
            <translation>إدارة الرأس مع النظر (تعويد)</translation>
        </message>
        <message>
            <source>After a sudden drop of the head</source>
            <comment>After a sudden drop of the head</comment>
            <translation>بعد هبوط مفاجئ للرأس</translation>
        </message>
        <message>
            <source>After an end for today</source>
            <comment>After an end for today</comment>
            <translation>بعد انتهاء التمرين لهذا اليوم</translation>
        </message>
        <message>
            <source>Against the published table</source>
            <comment>Against the published table</comment>
            <translation>مقارنة بالجدول المنشور</translation>
        </message>
        <message>
            <source>Arm of the bends</source>
            <comment>Arm of the bends</comment>
            <translation>ذراع الانحناء</translation>
        </message>
        <message>
            <source>Arm that was used</source>
            <comment>Arm that was used</comment>
            <translation>الذراع المستخدمة</translation>
        </message>
        <message>
            <source>Backward shoulder circles</source>
            <comment>Backward shoulder circles</comment>
            <translation>دوران الكتفين إلى الخلف</translation>
        </message>
        <message>
            <source>Backward shoulder circles, slow</source>
            <comment>Backward shoulder circles, slow</comment>
            <translation>دوران الكتفين إلى الخلف، ببطء</translation>
        </message>
        <message>
            <source>Baseline</source>
            <comment>Baseline</comment>
            <translation>القياس المرجعي</translation>
        </message>
        <message>
            <source>Camera's vertical field of view</source>
            <comment>Camera's vertical field of view</comment>
            <translation>مجال رؤية الكاميرا العمودي</translation>
        </message>
        <message>
            <source>Changed in the call</source>
            <comment>Changed in the call</comment>
            <translation>غُيّر في المكالمة</translation>
        </message>
        <message>
            <source>Convergence hold on a fingertip</source>
            <comment>Convergence hold on a fingertip</comment>
            <translation>تثبيت التقارب على طرف الإصبع</translation>
        </message>
        <message>
            <source>Convergence hold on a fingertip, as near as it stays single</source>
            <comment>Convergence hold on a fingertip, as near as it stays single</comment>
            <translation>تثبيت التقارب على طرف الإصبع، أقرب ما يبقى واحدًا</translation>
        </message>
        <message>
            <source>Counted by the patient</source>
            <comment>Counted by the patient</comment>
            <translation>عدّه المريض</translation>
        </message>
        <message>
            <source>Distance end to end</source>
            <comment>Distance end to end</comment>
            <translation>المسافة من طرف إلى طرف</translation>
        </message>
        <message>
            <source>Distance from rest</source>
            <comment>Distance from rest</comment>
            <translation>البعد عن الراحة</translation>
        </message>
        <message>
            <source>Dizziness</source>
            <comment>Dizziness</comment>
            <translation>الدوخة</translation>
        </message>
        <message>
            <source>Dizziness after last time</source>
            <comment>Dizziness after last time</comment>
            <translation>الدوخة بعد المرة الأخيرة</translation>
        </message>
        <message>
            <source>Exercises begun</source>
            <comment>Exercises begun</comment>
            <translation>التمارين التي بدأت</translation>
        </message>
        <message>
            <source>Eye turn per head turn (no diagnostic gain)</source>
            <comment>Eye turn per head turn (no diagnostic gain)</comment>
            <translation>دوران العين لكل دوران للرأس (ليس كسبًا تشخيصيًا)</translation>
        </message>
        <message>
            <source>Eyes and head together on a thumb held out that moves from side to side</source>
            <comment>Eyes and head together on a thumb held out that moves from side to side</comment>
            <translation>العينان والرأس معًا على الإبهام الممدود المتحرك</translation>
        </message>
        <message>
            <source>Eyes as they opened</source>
            <comment>Eyes as they opened</comment>
            <translation>العينان عند فتحهما</translation>
        </message>
        <message>
            <source>Eyes beyond the target</source>
            <comment>Eyes beyond the target</comment>
            <translation>تجاوز العينين للهدف</translation>
        </message>
        <message>
            <source>Eyes came to rest</source>
            <comment>Eyes came to rest</comment>
            <translation>استقرت العينان</translation>
        </message>
        <message>
            <source>Eyes closed, blinks included</source>
            <comment>Eyes closed, blinks included</comment>
            <translation>العينان مغمضتان، مع الرمش</translation>
        </message>
        <message>
            <source>Eyes to camera</source>
            <comment>Eyes to camera</comment>
            <translation>من العينين إلى الكاميرا</translation>
        </message>
        <message>
            <source>Eyes watched</source>
            <comment>Eyes watched</comment>
            <translation>العينان المراقبتان</translation>
        </message>
        <message>
            <source>Falls in the last week</source>
            <comment>Falls in the last week</comment>
            <translation>السقوط في الأسبوع الماضي</translation>
        </message>
        <message>
            <source>Field of view known by</source>
            <comment>Field of view known by</comment>
            <translation>مصدر مجال الرؤية</translation>
        </message>
        <message>
            <source>Five stands</source>
            <comment>Five stands</comment>
            <translation>خمس قومات</translation>
        </message>
        <message>
            <source>Five-times sit-to-stand</source>
            <comment>Five-times sit-to-stand</comment>
            <translation>القيام خمس مرات</translation>
        </message>
        <message>
            <source>Five-times sit-to-stand: 43 cm chair, arms crossed, as fast as is safe</source>
            <comment>Five-times sit-to-stand: 43 cm chair, arms crossed, as fast as is safe</comment>
            <translation>القيام خمس مرات: كرسي 43 سم، الذراعان متقاطعتان، بأسرع ما هو آمن</translation>
        </message>
        <message>
            <source>Fore-aft weight shift about the ankles</source>
            <comment>Fore-aft weight shift about the ankles</comment>
            <translation>نقل الوزن أمامًا وخلفًا حول الكاحلين</translation>
        </message>
        <message>
            <source>Fore-aft weight shift about the ankles, gaze level</source>
            <comment>Fore-aft weight shift about the ankles, gaze level</comment>
            <translation>نقل الوزن أمامًا وخلفًا حول الكاحلين، والنظر مستوٍ</translation>
        </message>
        <message>
            <source>Forward bends from a chair to put down and fetch an object</source>
            <comment>Forward bends from a chair to put down and fetch an object</comment>
            <translation>انحناء من الكرسي لوضع شيء والتقاطه</translation>
        </message>
        <message>
            <source>Forward bends from a chair to put down and fetch an object (both = 1)</source>
            <comment>Forward bends from a chair to put down and fetch an object (both = 1)</comment>
            <translation>انحناء من الكرسي لوضع شيء والتقاطه (كلاهما = 1)</translation>
        </message>
        <message>
            <source>Forward shoulder circles</source>
            <comment>Forward shoulder circles</comment>
            <translation>دوران الكتفين إلى الأمام</translation>
        </message>
        <message>
            <source>Forward shoulder circles, slow</source>
            <comment>Forward shoulder circles, slow</comment>
            <translation>دوران الكتفين إلى الأمام، ببطء</translation>
        </message>
        <message>
            <source>Frame rate</source>
            <comment>Frame rate</comment>
            <translation>معدل الصور</translation>
        </message>
        <message>
            <source>From one to the next</source>
            <comment>From one to the next</comment>
            <translation>من مرة إلى التالية</translation>
        </message>
        <message>
            <source>Gait forward and backward</source>
            <comment>Gait forward and backward</comment>
            <translation>مشي إلى الأمام والخلف</translation>
        </message>
        <message>
            <source>Gait forward and backward, ten steps each way (= 1)</source>
            <comment>Gait forward and backward, ten steps each way (= 1)</comment>
            <translation>مشي إلى الأمام والخلف، عشر خطوات في كل اتجاه (= 1)</translation>
        </message>
        <message>
            <source>Gaze error at set-up</source>
            <comment>Gaze error at set-up</comment>
            <translation>خطأ النظر في الإعداد</translation>
        </message>
        <message>
            <source>Gaze error at the wall</source>
            <comment>Gaze error at the wall</comment>
            <translation>خطأ النظر عند الجدار</translation>
        </message>
        <message>
            <source>Gaze from target</source>
            <comment>Gaze from target</comment>
            <translation>بعد النظر عن الهدف</translation>
        </message>
        <message>
            <source>Glasses</source>
            <comment>Glasses</comment>
            <translation>النظارة</translation>
        </message>
        <message>
            <source>Had to hold on</source>
            <comment>Had to hold on</comment>
            <translation>اضطر إلى الإمساك</translation>
        </message>
        <message>
            <source>Hand-to-hand toss over eye height</source>
            <comment>Hand-to-hand toss over eye height</comment>
            <translation>رمي من يد إلى يد فوق مستوى العينين</translation>
        </message>
        <message>
            <source>Hand-to-hand toss over eye height, tracked with eyes and head</source>
            <comment>Hand-to-hand toss over eye height, tracked with eyes and head</comment>
            <translation>رمي من يد إلى يد فوق مستوى العينين، تتبعه العينان والرأس</translation>
        </message>
        <message>
            <source>Head shaking in stance on a compliant surface</source>
            <comment>Head shaking in stance on a compliant surface</comment>
            <translation>هز الرأس وقوفًا على سطح لين</translation>
        </message>
        <message>
            <source>Head tilts</source>
            <comment>Head tilts</comment>
            <translation>إمالة الرأس</translation>
        </message>
        <message>
            <source>Head tilts, ear towards the shoulder, right and left</source>
            <comment>Head tilts, ear towards the shoulder, right and left</comment>
            <translation>إمالة الرأس، الأذن نحو الكتف، يمينًا ويسارًا</translation>
        </message>
        <message>
            <source>Head turn against a mark on the wall</source>
            <comment>Head turn against a mark on the wall</comment>
            <translation>دوران الرأس مقابل علامة على الجدار</translation>
        </message>
        <message>
            <source>Head with the throws</source>
            <comment>Head with the throws</comment>
            <translation>الرأس مع الرميات</translation>
        </message>
        <message>
            <source>Held as asked</source>
            <comment>Held as asked</comment>
            <translation>الثبات كما طُلب</translation>
        </message>
        <message>
            <source>Horizontal saccades between two targets</source>
            <comment>Horizontal saccades between two targets</comment>
            <translation>حركات رمشية أفقية بين هدفين</translation>
        </message>
        <message>
            <source>Horizontal saccades between two targets, head still</source>
            <comment>Horizontal saccades between two targets, head still</comment>
            <translation>حركات رمشية أفقية بين هدفين، والرأس ثابت</translation>
        </message>
        <message>
            <source>Hurt in a fall</source>
            <comment>Hurt in a fall</comment>
            <translation>إصابة عند السقوط</translation>
        </message>
        <message>
            <source>Lateral weight shift on a compliant surface</source>
            <comment>Lateral weight shift on a compliant surface</comment>
            <translation>نقل الوزن جانبيًا على سطح لين</translation>
        </message>
        <message>
            <source>Length</source>
            <comment>Length</comment>
            <translation>المدة</translation>
        </message>
        <message>
            <source>Light on the face, of full</source>
            <comment>Light on the face, of full</comment>
            <translation>الضوء على الوجه، من الكامل</translation>
        </message>
        <message>
            <source>Medicines changed</source>
            <comment>Medicines changed</comment>
            <translation>تغيّر الأدوية</translation>
        </message>
        <message>
            <source>Moments marked</source>
            <comment>Moments marked</comment>
            <translation>لحظات عُلّمت</translation>
        </message>
        <message>
            <source>Nausea</source>
            <comment>Nausea</comment>
            <translation>الغثيان</translation>
        </message>
        <message>
            <source>Noticed, in all</source>
            <comment>Noticed, in all</comment>
            <translation>ما لوحظ إجمالًا</translation>
        </message>
        <message>
            <source>One-leg standing</source>
            <comment>One-leg standing</comment>
            <translation>وقوف على ساق واحدة</translation>
        </message>
        <message>
            <source>One-leg standing, each leg in turn</source>
            <comment>One-leg standing, each leg in turn</comment>
            <translation>وقوف على ساق واحدة، كل ساق بالتناوب</translation>
        </message>
        <message>
            <source>Quiet stance in a corner</source>
            <comment>Quiet stance in a corner</comment>
            <translation>وقوف هادئ في ركن</translation>
        </message>
        <message>
            <source>Quiet stance in a corner, gaze level on a wall mark (eyes open or closed)</source>
            <comment>Quiet stance in a corner, gaze level on a wall mark (eyes open or closed)</comment>
            <translation>وقوف هادئ في ركن، والنظر مستوٍ إلى علامة على الجدار (العينان مفتوحتان أو مغمضتان)</translation>
        </message>
        <message>
            <source>Reach of what was asked</source>
            <comment>Reach of what was asked</comment>
            <translation>المدى المبلوغ مما طُلب</translation>
        </message>
        <message>
            <source>Remembered target</source>
            <comment>Remembered target</comment>
            <translation>هدف متذكَّر</translation>
        </message>
        <message>
            <source>Remembered target: eyes shut, head turns, eyes kept where the target was</source>
            <comment>Remembered target: eyes shut, head turns, eyes kept where the target was</comment>
            <translation>هدف متذكَّر: العينان مغمضتان، والرأس يدور، وتبقى العينان حيث كان الهدف</translation>
        </message>
        <message>
            <source>Safety questions</source>
            <comment>Safety questions</comment>
            <translation>أسئلة السلامة</translation>
        </message>
        <message>
            <source>Set stopped for seeing double</source>
            <comment>Set stopped for seeing double</comment>
            <translation>أوقفت المجموعة لرؤية مزدوجة</translation>
        </message>
        <message>
            <source>Single turns</source>
            <comment>Single turns</comment>
            <translation>الحركات المفردة</translation>
        </message>
        <message>
            <source>Sit-to-stand</source>
            <comment>Sit-to-stand</comment>
            <translation>القيام من الجلوس</translation>
        </message>
        <message>
            <source>Sit-to-stand, arm support permitted</source>
            <comment>Sit-to-stand, arm support permitted</comment>
            <translation>القيام من الجلوس، والاستناد بالذراعين مسموح</translation>
        </message>
        <message>
            <source>Slow nod</source>
            <comment>Slow nod</comment>
            <translation>الإيماء البطيء</translation>
        </message>
        <message>
            <source>Slow turn</source>
            <comment>Slow turn</comment>
            <translation>الدوران البطيء</translation>
        </message>
        <message>
            <source>Slow vergence with a fingertip</source>
            <comment>Slow vergence with a fingertip</comment>
            <translation>تقارب بطيء بطرف الإصبع</translation>
        </message>
        <message>
            <source>Slow vergence with a fingertip, arm's length to 30 cm, head still</source>
            <comment>Slow vergence with a fingertip, arm's length to 30 cm, head still</comment>
            <translation>تقارب بطيء بطرف الإصبع، من طول الذراع إلى 30 سم، والرأس ثابت</translation>
        </message>
        <message>
            <source>Smooth pursuit of a slow target</source>
            <comment>Smooth pursuit of a slow target</comment>
            <translation>تتبع بطيء لهدف</translation>
        </message>
        <message>
            <source>Smooth pursuit of a slow target, head still</source>
            <comment>Smooth pursuit of a slow target, head still</comment>
            <translation>تتبع بطيء لهدف، والرأس ثابت</translation>
        </message>
        <message>
            <source>Stands in 30 s</source>
            <comment>Stands in 30 s</comment>
            <translation>القومات في 30 ث</translation>
        </message>
        <message>
            <source>Step up and down with the rail</source>
            <comment>Step up and down with the rail</comment>
            <translation>صعود ونزول مع الدرابزين</translation>
        </message>
        <message>
            <source>Step up and down with the rail (= 1)</source>
            <comment>Step up and down with the rail (= 1)</comment>
            <translation>صعود ونزول مع الدرابزين (= 1)</translation>
        </message>
        <message>
            <source>Support</source>
            <comment>Support</comment>
            <translation>السند</translation>
        </message>
        <message>
            <source>Sway, 95 % area</source>
            <comment>Sway, 95 % area</comment>
            <translation>التمايل، مساحة 95 %</translation>
        </message>
        <message>
            <source>Sway, RMS</source>
            <comment>Sway, RMS</comment>
            <translation>التمايل، RMS</translation>
        </message>
        <message>
            <source>Sway, range</source>
            <comment>Sway, range</comment>
            <translation>التمايل، المدى</translation>
        </message>
        <message>
            <source>Tandem standing</source>
            <comment>Tandem standing</comment>
            <translation>وقوف متتابع القدمين</translation>
        </message>
        <message>
            <source>Tandem standing, heel to toe</source>
            <comment>Tandem standing, heel to toe</comment>
            <translation>وقوف متتابع القدمين، الكعب أمام الأصابع</translation>
        </message>
        <message>
            <source>Target looked</source>
            <comment>Target looked</comment>
            <translation>مظهر الهدف</translation>
        </message>
        <message>
            <source>Targets left out</source>
            <comment>Targets left out</comment>
            <translation>أهداف متروكة</translation>
        </message>
        <message>
            <source>The head after the drop</source>
            <comment>The head after the drop</comment>
            <translation>الرأس بعد الهبوط</translation>
        </message>
        <message>
            <source>Throw above the eyes</source>
            <comment>Throw above the eyes</comment>
            <translation>الرمية فوق العينين</translation>
        </message>
        <message>
            <source>Time</source>
            <comment>Time</comment>
            <translation>الوقت</translation>
        </message>
        <message>
            <source>Time of one way</source>
            <comment>Time of one way</comment>
            <translation>زمن المسار الواحد</translation>
        </message>
        <message>
            <source>Tolerance of a small</source>
            <comment>Tolerance of a small</comment>
            <translation>تحمل خلفية صغيرة متحركة</translation>
        </message>
        <message>
            <source>Tolerance of a small, slow moving background (optokinetic habituation)</source>
            <comment>Tolerance of a small, slow moving background (optokinetic habituation)</comment>
            <translation>تحمل خلفية صغيرة بطيئة الحركة (تعويد بصري حركي)</translation>
        </message>
        <message>
            <source>Trunk turns with a partner who hands over an object on either side</source>
            <comment>Trunk turns with a partner who hands over an object on either side</comment>
            <translation>دوران الجذع مع شخص يسلّم شيئًا من كل جهة</translation>
        </message>
        <message>
            <source>Turning between two targets</source>
            <comment>Turning between two targets</comment>
            <translation>استدارة بين هدفين</translation>
        </message>
        <message>
            <source>Turning between two targets: the eyes first, then the head</source>
            <comment>Turning between two targets: the eyes first, then the head</comment>
            <translation>استدارة بين هدفين: العينان أولًا ثم الرأس</translation>
        </message>
        <message>
            <source>Uncertainty, ±</source>
            <comment>Uncertainty, ±</comment>
            <translation>عدم اليقين، ±</translation>
        </message>
        <message>
            <source>Unsteadiness</source>
            <comment>Unsteadiness</comment>
            <translation>عدم الثبات</translation>
        </message>
        <message>
            <source>Vertical saccades between two targets</source>
            <comment>Vertical saccades between two targets</comment>
            <translation>حركات رمشية عمودية بين هدفين</translation>
        </message>
        <message>
            <source>Vertical saccades between two targets, small at first, head still</source>
            <comment>Vertical saccades between two targets, small at first, head still</comment>
            <translation>حركات رمشية عمودية بين هدفين، صغيرة في البداية، والرأس ثابت</translation>
        </message>
        <message>
            <source>Wall, from mark to mark</source>
            <comment>Wall, from mark to mark</comment>
            <translation>الجدار، من علامة إلى علامة</translation>
        </message>
        <message>
            <source>Wall, from the eyes</source>
            <comment>Wall, from the eyes</comment>
            <translation>الجدار، من العينين</translation>
        </message>
        <message>
            <source>Wall, marks above the camera</source>
            <comment>Wall, marks above the camera</comment>
            <translation>الجدار، العلامات فوق الكاميرا</translation>
        </message>
        <message>
            <source>Wall, marks right of the camera</source>
            <comment>Wall, marks right of the camera</comment>
            <translation>الجدار، العلامات يمين الكاميرا</translation>
        </message>
        <message>
            <source>Way of the rolls</source>
            <comment>Way of the rolls</comment>
            <translation>اتجاه الدوران</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, amplitude</source>
            <comment>Worst on rendered heads in good light, amplitude</comment>
            <translation>أكبر خطأ على رؤوس مرسومة في ضوء جيد، مدى الحركة</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, gaze</source>
            <comment>Worst on rendered heads in good light, gaze</comment>
            <translation>أكبر خطأ على رؤوس مرسومة في ضوء جيد، النظر</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, head angle</source>
            <comment>Worst on rendered heads in good light, head angle</comment>
            <translation>أكبر خطأ على رؤوس مرسومة في ضوء جيد، زاوية الرأس</translation>
        </message>
        <message>
            <source>Worst on rendered heads in good light, peak speed</source>
            <comment>Worst on rendered heads in good light, peak speed</comment>
            <translation>أكبر خطأ على رؤوس مرسومة في ضوء جيد، أعلى سرعة</translation>
        </message>
        <message>
            <source>a camera's frame rate can't carry the speed of an eye jump</source>
            <comment>a camera's frame rate can't carry the speed of an eye jump</comment>
            <translation>معدل صور الكاميرا لا يكفي لسرعة قفزة العين</translation>
        </message>
        <message>
            <source>a fall, told in the question of the week</source>
            <comment>a fall, told in the question of the week</comment>
            <translation>سقوط ذُكر في السؤال الأسبوعي</translation>
        </message>
        <message>
            <source>a safety question ended it</source>
            <comment>a safety question ended it</comment>
            <translation>انتهت بسؤال سلامة</translation>
        </message>
        <message>
            <source>a set was made easier than the plan has it</source>
            <comment>a set was made easier than the plan has it</comment>
            <translation>جُعلت مجموعة أسهل مما في الخطة</translation>
        </message>
        <message>
            <source>a short spin on bending or tilting ends it: hold on and sit; you read of it first</source>
            <comment>a short spin on bending or tilting ends it: hold on and sit; you read of it first</comment>
            <translation>دوران قصير عند الانحناء أو الميل ينهيه: الإمساك والجلوس؛ تقرأ عنه أولًا</translation>
        </message>
        <message>
            <source>a target held in the hand</source>
            <comment>a target held in the hand</comment>
            <translation>هدف ممسوك باليد</translation>
        </message>
        <message>
            <source>a trace alone: whether there was a set-up, and how well the gaze was read, is not known</source>
            <comment>a trace alone: whether there was a set-up, and how well the gaze was read, is not known</comment>
            <translation>سلسلة قياسات وحدها: لا يُعرف هل كان هناك إعداد، ولا مدى دقة قراءة النظر</translation>
        </message>
        <message>
            <source>a try of the program, not practice</source>
            <comment>a try of the program, not practice</comment>
            <translation>تجربة للبرنامج، وليست تمرينًا</translation>
        </message>
        <message>
            <source>after</source>
            <comment>after</comment>
            <translation>بعد</translation>
        </message>
        <message>
            <source>all answered no</source>
            <comment>all answered no</comment>
            <translation>أُجيب عن كلها بلا</translation>
        </message>
        <message>
            <source>amplitude</source>
            <comment>amplitude</comment>
            <translation>المدى</translation>
        </message>
        <message>
            <source>amplitude too large</source>
            <comment>amplitude too large</comment>
            <translation>المدى كبير جدًا</translation>
        </message>
        <message>
            <source>amplitude too small</source>
            <comment>amplitude too small</comment>
            <translation>المدى صغير جدًا</translation>
        </message>
        <message>
            <source>an earlier session of the day had to be ended</source>
            <comment>an earlier session of the day had to be ended</comment>
            <translation>كان لا بد من إنهاء جلسة سابقة في ذلك اليوم</translation>
        </message>
        <message>
            <source>and was hurt</source>
            <comment>and was hurt</comment>
            <translation>مع إصابة</translation>
        </message>
        <message>
            <source>another exercise was asked for</source>
            <comment>another exercise was asked for</comment>
            <translation>كان المطلوب تمرينًا آخر</translation>
        </message>
        <message>
            <source>answered yes: {what}</source>
            <comment>answered yes: {what}</comment>
            <translation>أُجيب بنعم: {what}</translation>
        </message>
        <message>
            <source>asked</source>
            <comment>asked</comment>
            <translation>المطلوب</translation>
        </message>
        <message>
            <source>asked after it</source>
            <comment>asked after it</comment>
            <translation>السؤال بعد ذلك</translation>
        </message>
        <message>
            <source>back</source>
            <comment>back</comment>
            <translation>الخلف</translation>
        </message>
        <message>
            <source>before</source>
            <comment>before</comment>
            <translation>قبل</translation>
        </message>
        <message>
            <source>below average ({bound} {limit} is below)</source>
            <comment>below average ({bound} {limit} is below)</comment>
            <translation>دون المتوسط ({bound} {limit} يُعد دونه)</translation>
        </message>
        <message>
            <source>bending at the hip</source>
            <comment>bending at the hip</comment>
            <translation>الانحناء عند الورك</translation>
        </message>
        <message>
            <source>beside the target</source>
            <comment>beside the target</comment>
            <translation>بجانب الهدف</translation>
        </message>
        <message>
            <source>beyond it</source>
            <comment>beyond it</comment>
            <translation>بعده</translation>
        </message>
        <message>
            <source>bi- or varifocal</source>
            <comment>bi- or varifocal</comment>
            <translation>ثنائية أو متعددة البؤر</translation>
        </message>
        <message>
            <source>bi- or varifocal glasses in nods</source>
            <comment>bi- or varifocal glasses in nods</comment>
            <translation>نظارة ثنائية أو متعددة البؤر مع حركة الرأس إلى أعلى وأسفل</translation>
        </message>
        <message>
            <source>blackout</source>
            <comment>blackout</comment>
            <translation>فقدان الوعي</translation>
        </message>
        <message>
            <source>blurred</source>
            <comment>blurred</comment>
            <translation>غير واضح</translation>
        </message>
        <message>
            <source>both</source>
            <comment>both</comment>
            <translation>كلتاهما</translation>
        </message>
        <message>
            <source>both, in turn</source>
            <comment>both, in turn</comment>
            <translation>كلتاهما، بالتناوب</translation>
        </message>
        <message>
            <source>broke off (program or computer)</source>
            <comment>broke off (program or computer)</comment>
            <translation>انقطعت (البرنامج أو الحاسوب)</translation>
        </message>
        <message>
            <source>camera gone for some of it</source>
            <comment>camera gone for some of it</comment>
            <translation>غابت الكاميرا بعض الوقت</translation>
        </message>
        <message>
            <source>catch-up saccades below 2 degrees, and how fast any of them are</source>
            <comment>catch-up saccades below 2 degrees, and how fast any of them are</comment>
            <translation>حركات اللحاق الأصغر من 2 درجة، وسرعة أي منها</translation>
        </message>
        <message>
            <source>chair against the wall, no wheels</source>
            <comment>chair against the wall, no wheels</comment>
            <translation>الكرسي إلى الجدار، بلا عجلات</translation>
        </message>
        <message>
            <source>chest pain</source>
            <comment>chest pain</comment>
            <translation>ألم في الصدر</translation>
        </message>
        <message>
            <source>chin down</source>
            <comment>chin down</comment>
            <translation>الذقن منخفض</translation>
        </message>
        <message>
            <source>clear</source>
            <comment>clear</comment>
            <translation>واضح</translation>
        </message>
        <message>
            <source>clear lit floor; helper at the side, behind when walking backward</source>
            <comment>clear lit floor; helper at the side, behind when walking backward</comment>
            <translation>أرض خالية مضاءة؛ المساعد إلى الجانب، وخلفه عند المشي إلى الوراء</translation>
        </message>
        <message>
            <source>clearance checklist not ticked</source>
            <comment>clearance checklist not ticked</comment>
            <translation>قائمة الإجازة لم تُعلّم</translation>
        </message>
        <message>
            <source>closed the question without saying</source>
            <comment>closed the question without saying</comment>
            <translation>أغلق السؤال دون أن يقول شيئًا</translation>
        </message>
        <message>
            <source>condition met: {what}</source>
            <comment>condition met: {what}</comment>
            <translation>تحقق الشرط: {what}</translation>
        </message>
        <message>
            <source>confirmed</source>
            <comment>confirmed</comment>
            <translation>مؤكد</translation>
        </message>
        <message>
            <source>corner and chair</source>
            <comment>corner and chair</comment>
            <translation>ركن وكرسي</translation>
        </message>
        <message>
            <source>corner behind, stable chair in front or a helper; flat closed shoes, or bare feet</source>
            <comment>corner behind, stable chair in front or a helper; flat closed shoes, or bare feet</comment>
            <translation>ركن خلفه، وكرسي ثابت أمامه أو مساعد؛ حذاء مسطح مغلق أو حافيًا</translation>
        </message>
        <message>
            <source>counted within</source>
            <comment>counted within</comment>
            <translation>محسوب ضمن</translation>
        </message>
        <message>
            <source>dark</source>
            <comment>dark</comment>
            <translation>مظلم</translation>
        </message>
        <message>
            <source>did not answer</source>
            <comment>did not answer</comment>
            <translation>لم يُجب</translation>
        </message>
        <message>
            <source>differs between the exercises</source>
            <comment>differs between the exercises</comment>
            <translation>يختلف بين التمارين</translation>
        </message>
        <message>
            <source>dizziness after</source>
            <comment>dizziness after</comment>
            <translation>الدوخة بعد</translation>
        </message>
        <message>
            <source>dizziness before</source>
            <comment>dizziness before</comment>
            <translation>الدوخة قبل</translation>
        </message>
        <message>
            <source>dizziness unlike the usual</source>
            <comment>dizziness unlike the usual</comment>
            <translation>دوخة لا تشبه المعتاد</translation>
        </message>
        <message>
            <source>dizziness, next morning</source>
            <comment>dizziness, next morning</comment>
            <translation>الدوخة، الصباح التالي</translation>
        </message>
        <message>
            <source>dizziness, rest of the day</source>
            <comment>dizziness, rest of the day</comment>
            <translation>الدوخة، بقية اليوم</translation>
        </message>
        <message>
            <source>double</source>
            <comment>double</comment>
            <translation>مزدوج</translation>
        </message>
        <message>
            <source>double image (asked)</source>
            <comment>double image (asked)</comment>
            <translation>صورة مزدوجة (يُسأل عنها)</translation>
        </message>
        <message>
            <source>double vision</source>
            <comment>double vision</comment>
            <translation>رؤية مزدوجة</translation>
        </message>
        <message>
            <source>down</source>
            <comment>down</comment>
            <translation>أسفل</translation>
        </message>
        <message>
            <source>end to end</source>
            <comment>end to end</comment>
            <translation>من طرف إلى طرف</translation>
        </message>
        <message>
            <source>ended by a safety question</source>
            <comment>ended by a safety question</comment>
            <translation>انتهت بسؤال سلامة</translation>
        </message>
        <message>
            <source>ended by the symptom rule</source>
            <comment>ended by the symptom rule</comment>
            <translation>انتهت بقاعدة الأعراض</translation>
        </message>
        <message>
            <source>error</source>
            <comment>error</comment>
            <translation>الخطأ</translation>
        </message>
        <message>
            <source>expected</source>
            <comment>expected</comment>
            <translation>المتوقع</translation>
        </message>
        <message>
            <source>eye movement short of the target</source>
            <comment>eye movement short of the target</comment>
            <translation>حركة العين لم تصل إلى الهدف</translation>
        </message>
        <message>
            <source>eye movements that stop short of the target</source>
            <comment>eye movements that stop short of the target</comment>
            <translation>حركات عين تتوقف قبل الهدف</translation>
        </message>
        <message>
            <source>eyes and head together, not the eyes first</source>
            <comment>eyes and head together, not the eyes first</comment>
            <translation>العينان والرأس معًا، لا العينان أولًا</translation>
        </message>
        <message>
            <source>eyes beyond the range of the set-up</source>
            <comment>eyes beyond the range of the set-up</comment>
            <translation>العينان خارج مدى الإعداد</translation>
        </message>
        <message>
            <source>eyes beyond the set-up</source>
            <comment>eyes beyond the set-up</comment>
            <translation>العينان خارج الإعداد</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>eyes closed</comment>
            <translation>العينان مغمضتان</translation>
        </message>
        <message>
            <source>eyes did not follow the finger</source>
            <comment>eyes did not follow the finger</comment>
            <translation>لم تتبع العينان الإصبع</translation>
        </message>
        <message>
            <source>eyes not with the head</source>
            <comment>eyes not with the head</comment>
            <translation>العينان ليستا مع الرأس</translation>
        </message>
        <message>
            <source>eyes open</source>
            <comment>eyes open</comment>
            <translation>العينان مفتوحتان</translation>
        </message>
        <message>
            <source>eyes opened</source>
            <comment>eyes opened</comment>
            <translation>فُتحت العينان</translation>
        </message>
        <message>
            <source>eyes shut</source>
            <comment>eyes shut</comment>
            <translation>العينان مغلقتان</translation>
        </message>
        <message>
            <source>eyes unlike the set-up</source>
            <comment>eyes unlike the set-up</comment>
            <translation>العينان لا تشبهان الإعداد</translation>
        </message>
        <message>
            <source>eyes unlike those of the set-up</source>
            <comment>eyes unlike those of the set-up</comment>
            <translation>العينان لا تشبهان ما في الإعداد</translation>
        </message>
        <message>
            <source>eyes unlike those of the set-up around then</source>
            <comment>eyes unlike those of the set-up around then</comment>
            <translation>العينان مختلفتان عمّا كانتا عليه عند الإعداد في ذلك الوقت تقريبًا</translation>
        </message>
        <message>
            <source>face covered, or its light changed</source>
            <comment>face covered, or its light changed</comment>
            <translation>الوجه مغطى أو تغير ضوؤه</translation>
        </message>
        <message>
            <source>fall since the last session</source>
            <comment>fall since the last session</comment>
            <translation>سقوط منذ الجلسة الأخيرة</translation>
        </message>
        <message>
            <source>far</source>
            <comment>far</comment>
            <translation>بعيد</translation>
        </message>
        <message>
            <source>faster than the beat</source>
            <comment>faster than the beat</comment>
            <translation>أسرع من الإيقاع</translation>
        </message>
        <message>
            <source>faster was asked towards the end</source>
            <comment>faster was asked towards the end</comment>
            <translation>طُلب أداء أسرع قرب النهاية</translation>
        </message>
        <message>
            <source>fell</source>
            <comment>fell</comment>
            <translation>انخفض</translation>
        </message>
        <message>
            <source>fewer than</source>
            <comment>fewer than</comment>
            <translation>أقل من</translation>
        </message>
        <message>
            <source>fewer than five stands</source>
            <comment>fewer than five stands</comment>
            <translation>أقل من خمس قومات</translation>
        </message>
        <message>
            <source>fewer than ten repetitions</source>
            <comment>fewer than ten repetitions</comment>
            <translation>أقل من عشر مرات</translation>
        </message>
        <message>
            <source>fewer than two repetitions</source>
            <comment>fewer than two repetitions</comment>
            <translation>أقل من مرتين</translation>
        </message>
        <message>
            <source>fewer than two turns</source>
            <comment>fewer than two turns</comment>
            <translation>أقل من حركتين</translation>
        </message>
        <message>
            <source>figures can't be trusted in {bad} of the last {all} sets: {why}</source>
            <comment>figures can't be trusted in {bad} of the last {all} sets: {why}</comment>
            <translation>القيم غير موثوقة في {bad} من آخر {all} مجموعات: {why}</translation>
        </message>
        <message>
            <source>finished</source>
            <comment>finished</comment>
            <translation>اكتملت</translation>
        </message>
        <message>
            <source>firm chair without wheels; feet flat, no reaching beyond the knees at first</source>
            <comment>firm chair without wheels; feet flat, no reaching beyond the knees at first</comment>
            <translation>كرسي ثابت بلا عجلات؛ القدمان على الأرض، ولا وصول أبعد من الركبتين في البداية</translation>
        </message>
        <message>
            <source>firm surface</source>
            <comment>firm surface</comment>
            <translation>سطح ثابت</translation>
        </message>
        <message>
            <source>first against last five</source>
            <comment>first against last five</comment>
            <translation>الخمس الأولى مقابل الخمس الأخيرة</translation>
        </message>
        <message>
            <source>first five</source>
            <comment>first five</comment>
            <translation>الخمس الأولى</translation>
        </message>
        <message>
            <source>fore-aft</source>
            <comment>fore-aft</comment>
            <translation>أمامًا وخلفًا</translation>
        </message>
        <message>
            <source>forward</source>
            <comment>forward</comment>
            <translation>الأمام</translation>
        </message>
        <message>
            <source>gaze and target were never measured together</source>
            <comment>gaze and target were never measured together</comment>
            <translation>لم يُقس النظر والهدف معًا قط</translation>
        </message>
        <message>
            <source>gaze off target</source>
            <comment>gaze off target</comment>
            <translation>النظر خارج الهدف</translation>
        </message>
        <message>
            <source>gaze on target</source>
            <comment>gaze on target</comment>
            <translation>النظر على الهدف</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % ({name})</source>
            <comment>gaze on target fell from {first} to {last} % ({name})</comment>
            <translation>انخفض النظر على الهدف من {first} إلى {last} % ({name})</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % with the head to the {side} ({name})</source>
            <comment>gaze on target fell from {first} to {last} % with the head to the {side} ({name})</comment>
            <translation>انخفض النظر على الهدف من {first} إلى {last} %، والرأس نحو: {side} ({name})</translation>
        </message>
        <message>
            <source>gaze on target fell from {first} to {last} % with the head to the {side}, less so to the other side ({name})</source>
            <comment>gaze on target fell from {first} to {last} % with the head to the {side}, less so to the other side ({name})</comment>
            <translation>انخفض النظر على الهدف من {first} إلى {last} %، والرأس نحو: {side}، وأقل نحو الجهة الأخرى ({name})</translation>
        </message>
        <message>
            <source>gaze stabilisation: {measured} minutes a day measured, {reported} told of</source>
            <comment>gaze stabilisation: {measured} minutes a day measured, {reported} told of</comment>
            <translation>تثبيت النظر: {measured} دقيقة في اليوم مقيسة، و{reported} مذكورة</translation>
        </message>
        <message>
            <source>gaze while bent</source>
            <comment>gaze while bent</comment>
            <translation>النظر عند الانحناء</translation>
        </message>
        <message>
            <source>half a minute to try the program out: not counted as practice</source>
            <comment>half a minute to try the program out: not counted as practice</comment>
            <translation>نصف دقيقة لتجربة البرنامج: لا يُحسب تمرينًا</translation>
        </message>
        <message>
            <source>hand on the rail, helper one step below, shoes on, eyes open</source>
            <comment>hand on the rail, helper one step below, shoes on, eyes open</comment>
            <translation>اليد على الدرابزين، والمساعد درجة أدنى، مع حذاء، والعينان مفتوحتان</translation>
        </message>
        <message>
            <source>head away from its middle</source>
            <comment>head away from its middle</comment>
            <translation>بعد الرأس عن وسطه</translation>
        </message>
        <message>
            <source>head before the eyes</source>
            <comment>head before the eyes</comment>
            <translation>الرأس قبل العينين</translation>
        </message>
        <message>
            <source>head moved along</source>
            <comment>head moved along</comment>
            <translation>تحرك الرأس أيضًا</translation>
        </message>
        <message>
            <source>head shake</source>
            <comment>head shake</comment>
            <translation>هز الرأس</translation>
        </message>
        <message>
            <source>head turned in place of tilting</source>
            <comment>head turned in place of tilting</comment>
            <translation>الرأس دار بدل أن يميل</translation>
        </message>
        <message>
            <source>head turned too far</source>
            <comment>head turned too far</comment>
            <translation>الرأس مُدار كثيرًا</translation>
        </message>
        <message>
            <source>head with the target, not against it</source>
            <comment>head with the target, not against it</comment>
            <translation>الرأس مع الهدف، لا عكسه</translation>
        </message>
        <message>
            <source>held on</source>
            <comment>held on</comment>
            <translation>أمسك بشيء</translation>
        </message>
        <message>
            <source>helper within arm's reach; a firm cushion that does not slip</source>
            <comment>helper within arm's reach; a firm cushion that does not slip</comment>
            <translation>مساعد في متناول الذراع؛ وسادة متماسكة لا تنزلق</translation>
        </message>
        <message>
            <source>helper within reach</source>
            <comment>helper within reach</comment>
            <translation>مساعد في المتناول</translation>
        </message>
        <message>
            <source>holding on to the wall or the chair (asked)</source>
            <comment>holding on to the wall or the chair (asked)</comment>
            <translation>الإمساك بالجدار أو الكرسي (يُسأل عنه)</translation>
        </message>
        <message>
            <source>holds for</source>
            <comment>holds for</comment>
            <translation>يسري على</translation>
        </message>
        <message>
            <source>how far the eyes go up and down (only coarsely)</source>
            <comment>how far the eyes go up and down (only coarsely)</comment>
            <translation>مدى حركة العينين إلى أعلى وأسفل (تقريبًا فقط)</translation>
        </message>
        <message>
            <source>how far the eyes turn in</source>
            <comment>how far the eyes turn in</comment>
            <translation>كم تلتف العينان إلى الداخل</translation>
        </message>
        <message>
            <source>how far the turns went was not seen</source>
            <comment>how far the turns went was not seen</comment>
            <translation>لم يُرَ إلى أي حد وصلت الالتفاتات</translation>
        </message>
        <message>
            <source>how high the shoulders really go (their landmarks follow about half)</source>
            <comment>how high the shoulders really go (their landmarks follow about half)</comment>
            <translation>مدى ارتفاع الكتفين حقًا (نقاطهما تتبع نحو النصف)</translation>
        </message>
        <message>
            <source>how it ended is not known</source>
            <comment>how it ended is not known</comment>
            <translation>لا يُعرف كيف انتهت</translation>
        </message>
        <message>
            <source>how near the finger really comes (its cycles are counted where the arm is seen)</source>
            <comment>how near the finger really comes (its cycles are counted where the arm is seen)</comment>
            <translation>مدى اقتراب الإصبع فعلًا (تُحسب دوراته حيث تظهر الذراع)</translation>
        </message>
        <message>
            <source>in a try of the program: {text}</source>
            <comment>in a try of the program: {text}</comment>
            <translation>أثناء تجربة البرنامج: {text}</translation>
        </message>
        <message>
            <source>in the plan, changed in the call</source>
            <comment>in the plan, changed in the call</comment>
            <translation>في الخطة، غُيّر في المكالمة</translation>
        </message>
        <message>
            <source>it broke off</source>
            <comment>it broke off</comment>
            <translation>انقطعت</translation>
        </message>
        <message>
            <source>it ended with a possible fall</source>
            <comment>it ended with a possible fall</comment>
            <translation>انتهت بسقوط محتمل</translation>
        </message>
        <message>
            <source>it is held for a time: there is nothing to count</source>
            <comment>it is held for a time: there is nothing to count</comment>
            <translation>يُثبت مدة: لا شيء للعد</translation>
        </message>
        <message>
            <source>it is in words only, and the therapist has not said so yet</source>
            <comment>it is in words only, and the therapist has not said so yet</comment>
            <translation>هو بالكلمات فقط، ولم يقل المعالج ذلك بعد</translation>
        </message>
        <message>
            <source>it was stopped unwell</source>
            <comment>it was stopped unwell</comment>
            <translation>أُوقفت لسوء الحال</translation>
        </message>
        <message>
            <source>its end is not recorded</source>
            <comment>its end is not recorded</comment>
            <translation>نهايته غير مسجلة</translation>
        </message>
        <message>
            <source>its end was out of the picture</source>
            <comment>its end was out of the picture</comment>
            <translation>كانت نهايتها خارج الصورة</translation>
        </message>
        <message>
            <source>its target can only be shown to who sits before the screen</source>
            <comment>its target can only be shown to who sits before the screen</comment>
            <translation>لا يمكن عرض هدفه إلا لمن يجلس أمام الشاشة</translation>
        </message>
        <message>
            <source>its target had too little room on the screen for anything to be counted</source>
            <comment>its target had too little room on the screen for anything to be counted</comment>
            <translation>لم يجد الهدف مكانًا كافيًا على الشاشة لعدّ أي شيء</translation>
        </message>
        <message>
            <source>jumping</source>
            <comment>jumping</comment>
            <translation>يقفز</translation>
        </message>
        <message>
            <source>k = 2 (some 95 %): noise and times of the pictures, error of the set-up; not the person's own spread</source>
            <comment>k = 2 (some 95 %): noise and times of the pictures, error of the set-up; not the person's own spread</comment>
            <translation>k = 2 (نحو 95 %): تشويش الصور وأوقاتها وخطأ الإعداد؛ لا تشتت الشخص نفسه</translation>
        </message>
        <message>
            <source>last five</source>
            <comment>last five</comment>
            <translation>الخمس الأخيرة</translation>
        </message>
        <message>
            <source>last five less first five (means)</source>
            <comment>last five less first five (means)</comment>
            <translation>الخمس الأخيرة ناقص الخمس الأولى (المتوسطات)</translation>
        </message>
        <message>
            <source>left</source>
            <comment>left</comment>
            <translation>اليسار</translation>
        </message>
        <message>
            <source>left eye only</source>
            <comment>left eye only</comment>
            <translation>العين اليسرى فقط</translation>
        </message>
        <message>
            <source>left out by the patient</source>
            <comment>left out by the patient</comment>
            <translation>تركه المريض</translation>
        </message>
        <message>
            <source>left out by the patient, as no camera could be used</source>
            <comment>left out by the patient, as no camera could be used</comment>
            <translation>تركه المريض، لأنه لم تكن هناك كاميرا صالحة للاستعمال</translation>
        </message>
        <message>
            <source>left the picture</source>
            <comment>left the picture</comment>
            <translation>خرج من الصورة</translation>
        </message>
        <message>
            <source>light on the face {value} of 1</source>
            <comment>light on the face {value} of 1</comment>
            <translation>الضوء على الوجه {value} من 1</translation>
        </message>
        <message>
            <source>line of sight not fitted</source>
            <comment>line of sight not fitted</comment>
            <translation>خط النظر لم يُحدد</translation>
        </message>
        <message>
            <source>line of sight steadily beside the target</source>
            <comment>line of sight steadily beside the target</comment>
            <translation>خط النظر بجانب الهدف طوال الوقت</translation>
        </message>
        <message>
            <source>longer than</source>
            <comment>longer than</comment>
            <translation>أطول من</translation>
        </message>
        <message>
            <source>longest stretch</source>
            <comment>longest stretch</comment>
            <translation>أطول جزء</translation>
        </message>
        <message>
            <source>lost while it dropped</source>
            <comment>lost while it dropped</comment>
            <translation>غاب عن الصورة أثناء هبوطه</translation>
        </message>
        <message>
            <source>low frame rate</source>
            <comment>low frame rate</comment>
            <translation>معدل صور منخفض</translation>
        </message>
        <message>
            <source>made from clips</source>
            <comment>made from clips</comment>
            <translation>من مقاطع</translation>
        </message>
        <message>
            <source>made from clips: the times between the sets are the plan's, nobody was there</source>
            <comment>made from clips: the times between the sets are the plan's, nobody was there</comment>
            <translation>من مقاطع: الأوقات بين المجموعات هي أوقات الخطة، ولم يكن أحد هناك</translation>
        </message>
        <message>
            <source>marks on the wall</source>
            <comment>marks on the wall</comment>
            <translation>علامات على الجدار</translation>
        </message>
        <message>
            <source>measured only part of the time</source>
            <comment>measured only part of the time</comment>
            <translation>قيس جزءًا من الوقت فقط</translation>
        </message>
        <message>
            <source>measured too unsteadily for so small a movement</source>
            <comment>measured too unsteadily for so small a movement</comment>
            <translation>القياس غير مستقر كفايةً لحركة بهذا الصغر</translation>
        </message>
        <message>
            <source>measured with a card</source>
            <comment>measured with a card</comment>
            <translation>قيس ببطاقة</translation>
        </message>
        <message>
            <source>measured with a sheet</source>
            <comment>measured with a sheet</comment>
            <translation>قيس بورقة</translation>
        </message>
        <message>
            <source>measuring was starting again</source>
            <comment>measuring was starting again</comment>
            <translation>كان القياس يبدأ من جديد</translation>
        </message>
        <message>
            <source>met in the last {needed} sessions</source>
            <comment>met in the last {needed} sessions</comment>
            <translation>متحقق في آخر {needed} جلسات</translation>
        </message>
        <message>
            <source>minutes to settle {value}, asked at most {most}</source>
            <comment>minutes to settle {value}, asked at most {most}</comment>
            <translation>الدقائق حتى الهدوء {value}، المطلوب {most} على الأكثر</translation>
        </message>
        <message>
            <source>more than one fall</source>
            <comment>more than one fall</comment>
            <translation>سقوط أكثر من مرة</translation>
        </message>
        <message>
            <source>more was asked towards the end</source>
            <comment>more was asked towards the end</comment>
            <translation>طُلب أكثر قرب النهاية</translation>
        </message>
        <message>
            <source>nausea after</source>
            <comment>nausea after</comment>
            <translation>الغثيان بعد</translation>
        </message>
        <message>
            <source>nausea before</source>
            <comment>nausea before</comment>
            <translation>الغثيان قبل</translation>
        </message>
        <message>
            <source>near</source>
            <comment>near</comment>
            <translation>قريب</translation>
        </message>
        <message>
            <source>neck pain</source>
            <comment>neck pain</comment>
            <translation>ألم في الرقبة</translation>
        </message>
        <message>
            <source>neither voice nor reader</source>
            <comment>neither voice nor reader</comment>
            <translation>لا صوت ولا قارئ</translation>
        </message>
        <message>
            <source>never with photosensitive epilepsy or migraine set off by patterns; no more than three flashes in any second</source>
            <comment>never with photosensitive epilepsy or migraine set off by patterns; no more than three flashes in any second</comment>
            <translation>أبدًا مع صرع حساس للضوء أو شقيقة تثيرها الأنماط؛ ليس أكثر من ثلاث ومضات في أي ثانية</translation>
        </message>
        <message>
            <source>next morning</source>
            <comment>next morning</comment>
            <translation>الصباح التالي</translation>
        </message>
        <message>
            <source>no</source>
            <comment>no</comment>
            <translation>لا</translation>
        </message>
        <message>
            <source>no bouts</source>
            <comment>no bouts</comment>
            <translation>لا تمرينات</translation>
        </message>
        <message>
            <source>no change</source>
            <comment>no change</comment>
            <translation>لا تغيّر</translation>
        </message>
        <message>
            <source>no clip of it</source>
            <comment>no clip of it</comment>
            <translation>لا مقطع منه</translation>
        </message>
        <message>
            <source>no cue when shut eyes open; the summary gives the share of time shut</source>
            <comment>no cue when shut eyes open; the summary gives the share of time shut</comment>
            <translation>لا تنبيه عند انفتاح العينين المغمضتين؛ يذكر الملخص نسبة وقت الإغماض</translation>
        </message>
        <message>
            <source>no day to count yet</source>
            <comment>no day to count yet</comment>
            <translation>لا يوم يُحسب بعد</translation>
        </message>
        <message>
            <source>no face in the picture</source>
            <comment>no face in the picture</comment>
            <translation>لا وجه في الصورة</translation>
        </message>
        <message>
            <source>no face seen</source>
            <comment>no face seen</comment>
            <translation>لم يُرَ وجه</translation>
        </message>
        <message>
            <source>no fall</source>
            <comment>no fall</comment>
            <translation>لا سقوط</translation>
        </message>
        <message>
            <source>no fall was told</source>
            <comment>no fall was told</comment>
            <translation>لم يُذكر أي سقوط</translation>
        </message>
        <message>
            <source>no gaze set-up</source>
            <comment>no gaze set-up</comment>
            <translation>لا إعداد للنظر</translation>
        </message>
        <message>
            <source>no helper</source>
            <comment>no helper</comment>
            <translation>لا مساعد</translation>
        </message>
        <message>
            <source>no marks on the wall</source>
            <comment>no marks on the wall</comment>
            <translation>لا علامات على الجدار</translation>
        </message>
        <message>
            <source>no pain in shoulder or neck; keep the movement small at first</source>
            <comment>no pain in shoulder or neck; keep the movement small at first</comment>
            <translation>لا ألم في الكتف أو الرقبة؛ حركة صغيرة في البداية</translation>
        </message>
        <message>
            <source>no picture from the camera</source>
            <comment>no picture from the camera</comment>
            <translation>لا صورة من الكاميرا</translation>
        </message>
        <message>
            <source>no practice for {days} days</source>
            <comment>no practice for {days} days</comment>
            <translation>لا تمرين منذ {days} من الأيام</translation>
        </message>
        <message>
            <source>no practice that day</source>
            <comment>no practice that day</comment>
            <translation>لا تمرين ذلك اليوم</translation>
        </message>
        <message>
            <source>no reason recorded</source>
            <comment>no reason recorded</comment>
            <translation>لا سبب مسجلًا</translation>
        </message>
        <message>
            <source>no score at the start</source>
            <comment>no score at the start</comment>
            <translation>لا درجة في البداية</translation>
        </message>
        <message>
            <source>no set-up</source>
            <comment>no set-up</comment>
            <translation>لا إعداد</translation>
        </message>
        <message>
            <source>no set-up for this person: generic values were used</source>
            <comment>no set-up for this person: generic values were used</comment>
            <translation>لا إعداد لهذا الشخص: استُخدمت قيم عامة</translation>
        </message>
        <message>
            <source>no throw was counted</source>
            <comment>no throw was counted</comment>
            <translation>لم تُعدّ أي رمية</translation>
        </message>
        <message>
            <source>no turn was counted</source>
            <comment>no turn was counted</comment>
            <translation>لم تُعدّ أي حركة</translation>
        </message>
        <message>
            <source>nobody has measured how well these eyes are read</source>
            <comment>nobody has measured how well these eyes are read</comment>
            <translation>لم يقس أحد مدى دقة قراءة هاتين العينين</translation>
        </message>
        <message>
            <source>nobody was asked</source>
            <comment>nobody was asked</comment>
            <translation>لم يُسأل أحد</translation>
        </message>
        <message>
            <source>none</source>
            <comment>none</comment>
            <translation>لا شيء</translation>
        </message>
        <message>
            <source>none was counted</source>
            <comment>none was counted</comment>
            <translation>لم تُعدّ أي منها</translation>
        </message>
        <message>
            <source>not answered</source>
            <comment>not answered</comment>
            <translation>دون إجابة</translation>
        </message>
        <message>
            <source>not asked</source>
            <comment>not asked</comment>
            <translation>لم يُسأل</translation>
        </message>
        <message>
            <source>not back to usual in the time that the plan allows</source>
            <comment>not back to usual in the time that the plan allows</comment>
            <translation>لم يعد كالمعتاد في الوقت الذي تسمح به الخطة</translation>
        </message>
        <message>
            <source>not below average ({bound} {limit} is below)</source>
            <comment>not below average ({bound} {limit} is below)</comment>
            <translation>ليس دون المتوسط ({bound} {limit} يُعد دونه)</translation>
        </message>
        <message>
            <source>not every stand was all the way up</source>
            <comment>not every stand was all the way up</comment>
            <translation>لم تكن كل قومة كاملة</translation>
        </message>
        <message>
            <source>not fully upright</source>
            <comment>not fully upright</comment>
            <translation>لم يستقم تمامًا</translation>
        </message>
        <message>
            <source>not hurt</source>
            <comment>not hurt</comment>
            <translation>دون إصابة</translation>
        </message>
        <message>
            <source>not known</source>
            <comment>not known</comment>
            <translation>غير معروف</translation>
        </message>
        <message>
            <source>not known for the speed of eyes</source>
            <comment>not known for the speed of eyes</comment>
            <translation>غير معروف لسرعة العينين</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>not measured</comment>
            <translation>لم يُقس</translation>
        </message>
        <message>
            <source>not measured in each of them</source>
            <comment>not measured in each of them</comment>
            <translation>لم يُقَس في كل واحدة منها</translation>
        </message>
        <message>
            <source>not reckoned for a share of what was asked</source>
            <comment>not reckoned for a share of what was asked</comment>
            <translation>لا يُحسب لنسبة مما طُلب</translation>
        </message>
        <message>
            <source>not reckoned for shoulders and hands</source>
            <comment>not reckoned for shoulders and hands</comment>
            <translation>لا يُحسب للكتفين واليدين</translation>
        </message>
        <message>
            <source>not reckoned for standing up and bending down</source>
            <comment>not reckoned for standing up and bending down</comment>
            <translation>لا يُحسب للنهوض والانحناء</translation>
        </message>
        <message>
            <source>not recorded</source>
            <comment>not recorded</comment>
            <translation>لم يُسجل</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>not seen</comment>
            <translation>لا يُرى</translation>
        </message>
        <message>
            <source>not settled</source>
            <comment>not settled</comment>
            <translation>لم تهدأ</translation>
        </message>
        <message>
            <source>not sure</source>
            <comment>not sure</comment>
            <translation>غير متأكد</translation>
        </message>
        <message>
            <source>not told</source>
            <comment>not told</comment>
            <translation>غير محدد</translation>
        </message>
        <message>
            <source>not unlocked yet</source>
            <comment>not unlocked yet</comment>
            <translation>لم تُفتح بعد</translation>
        </message>
        <message>
            <source>nothing is measured: led by voice and timed, the patient's own count</source>
            <comment>nothing is measured: led by voice and timed, the patient's own count</comment>
            <translation>لا يُقاس شيء: يقوده الصوت والوقت، ويعدّ المريض بنفسه</translation>
        </message>
        <message>
            <source>nothing is watched for in this exercise</source>
            <comment>nothing is watched for in this exercise</comment>
            <translation>لا يُراقب شيء في هذا التمرين</translation>
        </message>
        <message>
            <source>nothing was asked for</source>
            <comment>nothing was asked for</comment>
            <translation>لم يُطلب شيء</translation>
        </message>
        <message>
            <source>nothing was measured</source>
            <comment>nothing was measured</comment>
            <translation>لم يُقس شيء</translation>
        </message>
        <message>
            <source>older: {text}</source>
            <comment>older: {text}</comment>
            <translation>أقدم: {text}</translation>
        </message>
        <message>
            <source>on looks kept back</source>
            <comment>on looks kept back</comment>
            <translation>على نظرات محجوزة</translation>
        </message>
        <message>
            <source>on the target</source>
            <comment>on the target</comment>
            <translation>على الهدف</translation>
        </message>
        <message>
            <source>one fall</source>
            <comment>one fall</comment>
            <translation>سقوط مرة واحدة</translation>
        </message>
        <message>
            <source>opens only with the patient's yes</source>
            <comment>opens only with the patient's yes</comment>
            <translation>لا يُفتح إلا بموافقة المريض</translation>
        </message>
        <message>
            <source>order</source>
            <comment>order</comment>
            <translation>الترتيب</translation>
        </message>
        <message>
            <source>outside any plan: {text}</source>
            <comment>outside any plan: {text}</comment>
            <translation>خارج أي خطة: {text}</translation>
        </message>
        <message>
            <source>own pace</source>
            <comment>own pace</comment>
            <translation>بسرعة المريض نفسه</translation>
        </message>
        <message>
            <source>partner near and steady on their feet; hand over, do not throw</source>
            <comment>partner near and steady on their feet; hand over, do not throw</comment>
            <translation>الشخص الآخر قريب وثابت؛ تسليم باليد، لا رمي</translation>
        </message>
        <message>
            <source>peak speed</source>
            <comment>peak speed</comment>
            <translation>السرعة القصوى</translation>
        </message>
        <message>
            <source>peak speed of an eye jump (beyond a webcam's frame rate)</source>
            <comment>peak speed of an eye jump (beyond a webcam's frame rate)</comment>
            <translation>السرعة القصوى لقفزة العين (فوق معدل صور الكاميرا)</translation>
        </message>
        <message>
            <source>picture blurred</source>
            <comment>picture blurred</comment>
            <translation>الصورة غير واضحة</translation>
        </message>
        <message>
            <source>picture too coarse</source>
            <comment>picture too coarse</comment>
            <translation>الصورة غير واضحة بما يكفي</translation>
        </message>
        <message>
            <source>pictures missing</source>
            <comment>pictures missing</comment>
            <translation>صور ناقصة</translation>
        </message>
        <message>
            <source>positional spin on bending, looking up or tilting</source>
            <comment>positional spin on bending, looking up or tilting</comment>
            <translation>دوران وضعي عند الانحناء أو النظر إلى أعلى أو الميل</translation>
        </message>
        <message>
            <source>possible fall</source>
            <comment>possible fall</comment>
            <translation>سقوط محتمل</translation>
        </message>
        <message>
            <source>possible fall seen in {what}</source>
            <comment>possible fall seen in {what}</comment>
            <translation>سقوط محتمل شوهد في {what}</translation>
        </message>
        <message>
            <source>possible fall seen in {what}: {said}</source>
            <comment>possible fall seen in {what}: {said}</comment>
            <translation>سقوط محتمل شوهد في {what}: {said}</translation>
        </message>
        <message>
            <source>possible fall, and the session ended with it</source>
            <comment>possible fall, and the session ended with it</comment>
            <translation>سقوط محتمل، وانتهت الجلسة به</translation>
        </message>
        <message>
            <source>possible fall, and the session ended with it: {said}</source>
            <comment>possible fall, and the session ended with it: {said}</comment>
            <translation>سقوط محتمل، وانتهت به الجلسة: {said}</translation>
        </message>
        <message>
            <source>practised away from the camera, as the patient says</source>
            <comment>practised away from the camera, as the patient says</comment>
            <translation>تمرين بعيدًا عن الكاميرا، حسب قول المريض</translation>
        </message>
        <message>
            <source>practised {done} of {asked} bouts in {days} days</source>
            <comment>practised {done} of {asked} bouts in {days} days</comment>
            <translation>{done} من {asked} تمرينات خلال {days} من الأيام</translation>
        </message>
        <message>
            <source>record damaged</source>
            <comment>record damaged</comment>
            <translation>السجل تالف</translation>
        </message>
        <message>
            <source>red-flag answer: no practice</source>
            <comment>red-flag answer: no practice</comment>
            <translation>علامة إنذار: لا تمرين</translation>
        </message>
        <message>
            <source>repetitions</source>
            <comment>repetitions</comment>
            <translation>عدد المرات</translation>
        </message>
        <message>
            <source>reported by the patient, not seen</source>
            <comment>reported by the patient, not seen</comment>
            <translation>أبلغ عنه المريض ولم يُرَ</translation>
        </message>
        <message>
            <source>rest of the day</source>
            <comment>rest of the day</comment>
            <translation>بقية اليوم</translation>
        </message>
        <message>
            <source>right</source>
            <comment>right</comment>
            <translation>اليمين</translation>
        </message>
        <message>
            <source>right eye only</source>
            <comment>right eye only</comment>
            <translation>العين اليمنى فقط</translation>
        </message>
        <message>
            <source>rise of the score {value}, asked at most {most}</source>
            <comment>rise of the score {value}, asked at most {most}</comment>
            <translation>ارتفاع الدرجة {value}، المطلوب {most} على الأكثر</translation>
        </message>
        <message>
            <source>rose</source>
            <comment>rose</comment>
            <translation>ارتفع</translation>
        </message>
        <message>
            <source>said not to be well</source>
            <comment>said not to be well</comment>
            <translation>قال إنه ليس بخير</translation>
        </message>
        <message>
            <source>said that medicines have changed</source>
            <comment>said that medicines have changed</comment>
            <translation>ذكر أن أدويته تغيّرت</translation>
        </message>
        <message>
            <source>said to be all right</source>
            <comment>said to be all right</comment>
            <translation>قال إنه بخير</translation>
        </message>
        <message>
            <source>said to the patient</source>
            <comment>said to the patient</comment>
            <translation>ما قيل للمريض</translation>
        </message>
        <message>
            <source>sat at another distance</source>
            <comment>sat at another distance</comment>
            <translation>جلس على مسافة أخرى</translation>
        </message>
        <message>
            <source>score too high at the start for more than seated work</source>
            <comment>score too high at the start for more than seated work</comment>
            <translation>الدرجة في البداية أعلى من أن تسمح بغير الجلوس</translation>
        </message>
        <message>
            <source>seated until mastered; a soft object; a dropped one stays on the floor</source>
            <comment>seated until mastered; a soft object; a dropped one stays on the floor</comment>
            <translation>جلوسًا حتى يُتقن؛ شيء لين؛ ما يسقط يبقى على الأرض</translation>
        </message>
        <message>
            <source>seen double in today already</source>
            <comment>seen double in today already</comment>
            <translation>رأى فيه اليوم رؤية مزدوجة من قبل</translation>
        </message>
        <message>
            <source>seen to stay down</source>
            <comment>seen to stay down</comment>
            <translation>شوهد باقيًا في الأسفل</translation>
        </message>
        <message>
            <source>session ended before it</source>
            <comment>session ended before it</comment>
            <translation>انتهت الجلسة قبله</translation>
        </message>
        <message>
            <source>session {number} of the last {needed}: {why}</source>
            <comment>session {number} of the last {needed}: {why}</comment>
            <translation>الجلسة {number} من آخر {needed}: {why}</translation>
        </message>
        <message>
            <source>sessions dated after today: {count}; was that computer's clock right?</source>
            <comment>sessions dated after today: {count}; was that computer's clock right?</comment>
            <translation>جلسات بتاريخ بعد اليوم: {count}؛ هل كانت ساعة ذلك الحاسوب صحيحة؟</translation>
        </message>
        <message>
            <source>set-up not known</source>
            <comment>set-up not known</comment>
            <translation>الإعداد غير معروف</translation>
        </message>
        <message>
            <source>set-up unusable</source>
            <comment>set-up unusable</comment>
            <translation>الإعداد غير صالح</translation>
        </message>
        <message>
            <source>share measured {value}, asked at least {least} %</source>
            <comment>share measured {value}, asked at least {least} %</comment>
            <translation>النسبة المقيسة {value}، المطلوب {least} % على الأقل</translation>
        </message>
        <message>
            <source>share on target {value}, asked at least {least} %</source>
            <comment>share on target {value}, asked at least {least} %</comment>
            <translation>النسبة على الهدف {value}، المطلوب {least} % على الأقل</translation>
        </message>
        <message>
            <source>short of it</source>
            <comment>short of it</comment>
            <translation>قبله</translation>
        </message>
        <message>
            <source>shoulders and hands not all seen</source>
            <comment>shoulders and hands not all seen</comment>
            <translation>الكتفان واليدان لا تظهر كلها</translation>
        </message>
        <message>
            <source>sideways</source>
            <comment>sideways</comment>
            <translation>جانبًا</translation>
        </message>
        <message>
            <source>single vision</source>
            <comment>single vision</comment>
            <translation>بقوة واحدة</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>sitting</comment>
            <translation>جالسًا</translation>
        </message>
        <message>
            <source>slow down when the target blurs or jumps</source>
            <comment>slow down when the target blurs or jumps</comment>
            <translation>الإبطاء إذا صار الهدف غير واضح أو قفز</translation>
        </message>
        <message>
            <source>slower than the beat</source>
            <comment>slower than the beat</comment>
            <translation>أبطأ من الإيقاع</translation>
        </message>
        <message>
            <source>slower was asked towards the end</source>
            <comment>slower was asked towards the end</comment>
            <translation>طُلب أداء أبطأ قرب النهاية</translation>
        </message>
        <message>
            <source>slurred speech</source>
            <comment>slurred speech</comment>
            <translation>ثقل في الكلام</translation>
        </message>
        <message>
            <source>soft surface</source>
            <comment>soft surface</comment>
            <translation>سطح لين</translation>
        </message>
        <message>
            <source>some sway is normal; hands go to the wall or the chair as soon as needed</source>
            <comment>some sway is normal; hands go to the wall or the chair as soon as needed</comment>
            <translation>بعض التمايل طبيعي؛ اليدان إلى الجدار أو الكرسي حالما يلزم</translation>
        </message>
        <message>
            <source>source</source>
            <comment>source</comment>
            <translation>المصدر</translation>
        </message>
        <message>
            <source>spread</source>
            <comment>spread</comment>
            <translation>التشتت</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>standing</comment>
            <translation>واقفًا</translation>
        </message>
        <message>
            <source>stay within the neck limit; stop at neck pain or a tingling arm</source>
            <comment>stay within the neck limit; stop at neck pain or a tingling arm</comment>
            <translation>البقاء ضمن حد الرقبة؛ التوقف عند ألم الرقبة أو وخز الذراع</translation>
        </message>
        <message>
            <source>stayed</source>
            <comment>stayed</comment>
            <translation>بقي في مكانه</translation>
        </message>
        <message>
            <source>stop when dizziness goes beyond the agreed score or does not settle</source>
            <comment>stop when dizziness goes beyond the agreed score or does not settle</comment>
            <translation>التوقف إذا تجاوزت الدوخة الدرجة المتفق عليها أو لم تهدأ</translation>
        </message>
        <message>
            <source>stop where the image doubles, then move the finger back out</source>
            <comment>stop where the image doubles, then move the finger back out</comment>
            <translation>التوقف حيث تزدوج الصورة، ثم إبعاد الإصبع</translation>
        </message>
        <message>
            <source>stopped early</source>
            <comment>stopped early</comment>
            <translation>أُوقفت مبكرًا</translation>
        </message>
        <message>
            <source>stopped unwell</source>
            <comment>stopped unwell</comment>
            <translation>أُوقفت لسوء الحال</translation>
        </message>
        <message>
            <source>stretch not measured</source>
            <comment>stretch not measured</comment>
            <translation>جزء لم يُقس</translation>
        </message>
        <message>
            <source>sudden drop of the head in a set not seen to its end: {said}</source>
            <comment>sudden drop of the head in a set not seen to its end: {said}</comment>
            <translation>هبوط مفاجئ للرأس أثناء مجموعة لم تُرَ نهايته: {said}</translation>
        </message>
        <message>
            <source>sudden drop of the head in {what} not seen to its end: {said}</source>
            <comment>sudden drop of the head in {what} not seen to its end: {said}</comment>
            <translation>هبوط مفاجئ للرأس أثناء {what} لم تُرَ نهايته: {said}</translation>
        </message>
        <message>
            <source>sudden hearing loss</source>
            <comment>sudden hearing loss</comment>
            <translation>فقدان مفاجئ للسمع</translation>
        </message>
        <message>
            <source>sudden severe headache</source>
            <comment>sudden severe headache</comment>
            <translation>صداع شديد مفاجئ</translation>
        </message>
        <message>
            <source>support not confirmed</source>
            <comment>support not confirmed</comment>
            <translation>السند لم يُؤكد</translation>
        </message>
        <message>
            <source>sway</source>
            <comment>sway</comment>
            <translation>التمايل</translation>
        </message>
        <message>
            <source>symptom score above the limit of the plan</source>
            <comment>symptom score above the limit of the plan</comment>
            <translation>درجة الأعراض فوق حد الخطة</translation>
        </message>
        <message>
            <source>symptom score not answered</source>
            <comment>symptom score not answered</comment>
            <translation>لم يُجب عن درجة الأعراض</translation>
        </message>
        <message>
            <source>symptoms above the plan's limit ended the session</source>
            <comment>symptoms above the plan's limit ended the session</comment>
            <translation>أعراض فوق حد الخطة أنهت الجلسة</translation>
        </message>
        <message>
            <source>symptoms above the plan's limit ended the session ({score} of 10 at the end)</source>
            <comment>symptoms above the plan's limit ended the session ({score} of 10 at the end)</comment>
            <translation>أعراض فوق حد الخطة أنهت الجلسة ({score} من 10 في النهاية)</translation>
        </message>
        <message>
            <source>symptoms did not settle in the time that the plan allows</source>
            <comment>symptoms did not settle in the time that the plan allows</comment>
            <translation>لم تهدأ الأعراض في الوقت الذي تسمح به الخطة</translation>
        </message>
        <message>
            <source>symptoms not settled within the time of the plan</source>
            <comment>symptoms not settled within the time of the plan</comment>
            <translation>لم تهدأ الأعراض ضمن وقت الخطة</translation>
        </message>
        <message>
            <source>taken together in the clinic</source>
            <comment>taken together in the clinic</comment>
            <translation>أُجري معًا في العيادة</translation>
        </message>
        <message>
            <source>target not said to be clear</source>
            <comment>target not said to be clear</comment>
            <translation>لم يُقل إن الهدف واضح</translation>
        </message>
        <message>
            <source>target said to be clear</source>
            <comment>target said to be clear</comment>
            <translation>قيل إن الهدف واضح</translation>
        </message>
        <message>
            <source>tempo</source>
            <comment>tempo</comment>
            <translation>الإيقاع</translation>
        </message>
        <message>
            <source>the camera does not count it in this version; it is led and timed</source>
            <comment>the camera does not count it in this version; it is led and timed</comment>
            <translation>لا تعدّه الكاميرا في هذه النسخة؛ يُقاد ويُحسب وقته</translation>
        </message>
        <message>
            <source>the camera does not count this exercise in this version</source>
            <comment>the camera does not count this exercise in this version</comment>
            <translation>لا تعدّ الكاميرا هذا التمرين في هذه النسخة</translation>
        </message>
        <message>
            <source>the camera was gone for a while: what was done then is missing in its count</source>
            <comment>the camera was gone for a while: what was done then is missing in its count</comment>
            <translation>غابت الكاميرا مدة: ما أُدّي خلالها غير محسوب في عدّها</translation>
        </message>
        <message>
            <source>the chair's height: the table holds for 43 cm and arms crossed only</source>
            <comment>the chair's height: the table holds for 43 cm and arms crossed only</comment>
            <translation>ارتفاع الكرسي: يسري الجدول على 43 سم وذراعين متقاطعتين فقط</translation>
        </message>
        <message>
            <source>the day has not come yet on which the therapist found it met ({day})</source>
            <comment>the day has not come yet on which the therapist found it met ({day})</comment>
            <translation>لم يأت بعد اليوم الذي وجده فيه المعالج متحققًا ({day})</translation>
        </message>
        <message>
            <source>the eyes can't be judged in nods behind bi- or varifocal glasses</source>
            <comment>the eyes can't be judged in nods behind bi- or varifocal glasses</comment>
            <translation>لا يمكن الحكم على العينين خلف نظارة ثنائية أو متعددة البؤر مع حركة الرأس إلى أعلى وأسفل</translation>
        </message>
        <message>
            <source>the eyes look unlike those of the set-up: another light, or other glasses</source>
            <comment>the eyes look unlike those of the set-up: another light, or other glasses</comment>
            <translation>تبدو العينان مختلفتين عما في الإعداد: ضوء آخر أو نظارة أخرى</translation>
        </message>
        <message>
            <source>the eyes turned in by {value} degrees (within {error}) as the finger came near</source>
            <comment>the eyes turned in by {value} degrees (within {error}) as the finger came near</comment>
            <translation>اتجهت العينان إلى الداخل {value} درجة (بهامش {error}) عند اقتراب الإصبع</translation>
        </message>
        <message>
            <source>the eyes went beyond what the set-up taught</source>
            <comment>the eyes went beyond what the set-up taught</comment>
            <translation>تجاوزت العينان ما عُلّم في الإعداد</translation>
        </message>
        <message>
            <source>the eyes were never seen at rest on a target</source>
            <comment>the eyes were never seen at rest on a target</comment>
            <translation>لم تُرَ العينان مستقرتين على هدف قط</translation>
        </message>
        <message>
            <source>the feet and the stance</source>
            <comment>the feet and the stance</comment>
            <translation>القدمان والوقفة</translation>
        </message>
        <message>
            <source>the gaze is read too coarsely to tell whether it was on the target</source>
            <comment>the gaze is read too coarsely to tell whether it was on the target</comment>
            <translation>يُقرأ النظر بدقة لا تكفي لمعرفة هل كان على الهدف</translation>
        </message>
        <message>
            <source>the gaze is read too coarsely to tell whether the eyes arrived</source>
            <comment>the gaze is read too coarsely to tell whether the eyes arrived</comment>
            <translation>يُقرأ النظر بدقة لا تكفي لمعرفة هل وصلت العينان</translation>
        </message>
        <message>
            <source>the hand, its distance and its side</source>
            <comment>the hand, its distance and its side</comment>
            <translation>اليد وبعدها وجهتها</translation>
        </message>
        <message>
            <source>the hands</source>
            <comment>the hands</comment>
            <translation>اليدان</translation>
        </message>
        <message>
            <source>the head was not measured</source>
            <comment>the head was not measured</comment>
            <translation>لم يُقس الرأس</translation>
        </message>
        <message>
            <source>the lids were not measured</source>
            <comment>the lids were not measured</comment>
            <translation>لم تُقس الجفون</translation>
        </message>
        <message>
            <source>the line of sight was not measured</source>
            <comment>the line of sight was not measured</comment>
            <translation>لم يُقس خط النظر</translation>
        </message>
        <message>
            <source>the movement that was asked for is itself a sway or a stand</source>
            <comment>the movement that was asked for is itself a sway or a stand</comment>
            <translation>الحركة المطلوبة هي نفسها تمايل أو قيام</translation>
        </message>
        <message>
            <source>the neck point was measured for less than 5 seconds</source>
            <comment>the neck point was measured for less than 5 seconds</comment>
            <translation>قيست نقطة العنق أقل من 5 ثوانٍ</translation>
        </message>
        <message>
            <source>the object itself: the height of a throw is judged from the wrists</source>
            <comment>the object itself: the height of a throw is judged from the wrists</comment>
            <translation>الشيء نفسه: يُحكم على ارتفاع الرمية من المعصمين</translation>
        </message>
        <message>
            <source>the patient wants nothing to move on the screen</source>
            <comment>the patient wants nothing to move on the screen</comment>
            <translation>لا يريد المريض أن يتحرك شيء على الشاشة</translation>
        </message>
        <message>
            <source>the place of the target isn't known</source>
            <comment>the place of the target isn't known</comment>
            <translation>مكان الهدف غير معروف</translation>
        </message>
        <message>
            <source>the plan gives no age group or sex for the table</source>
            <comment>the plan gives no age group or sex for the table</comment>
            <translation>لا تذكر الخطة فئة عمرية أو جنسًا للجدول</translation>
        </message>
        <message>
            <source>the plan has no first day</source>
            <comment>the plan has no first day</comment>
            <translation>ليس للخطة يوم أول</translation>
        </message>
        <message>
            <source>the plan taken differs from the one handed out: {words}</source>
            <comment>the plan taken differs from the one handed out: {words}</comment>
            <translation>الخطة المعتمدة هنا تختلف عن الخطة التي سُلِّمت: {words}</translation>
        </message>
        <message>
            <source>the set ended while the head dropped</source>
            <comment>the set ended while the head dropped</comment>
            <translation>انتهت المجموعة والرأس يهبط</translation>
        </message>
        <message>
            <source>the set-up could not be used, so nothing rests on it</source>
            <comment>the set-up could not be used, so nothing rests on it</comment>
            <translation>تعذر استخدام الإعداد، فلا شيء مبني عليه</translation>
        </message>
        <message>
            <source>the set-up was too poor for the line of sight</source>
            <comment>the set-up was too poor for the line of sight</comment>
            <translation>كان الإعداد أضعف من أن يكفي لخط النظر</translation>
        </message>
        <message>
            <source>the set-up's picture told too little of the moving face: the head may be 1 to 2 degrees off, turns by a tenth</source>
            <comment>the set-up's picture told too little of the moving face: the head may be 1 to 2 degrees off, turns by a tenth</comment>
            <translation>أظهرت صورة الإعداد القليل من الوجه المتحرّك: قد تنحرف زوايا الرأس درجة إلى درجتين، والاستدارات بمقدار العُشر</translation>
        </message>
        <message>
            <source>the stage log says that another exercise was asked for</source>
            <comment>the stage log says that another exercise was asked for</comment>
            <translation>يقول السجل إن المطلوب كان تمرينًا آخر</translation>
        </message>
        <message>
            <source>the symptom rule ended it</source>
            <comment>the symptom rule ended it</comment>
            <translation>انتهت بقاعدة الأعراض</translation>
        </message>
        <message>
            <source>the table ends before this age</source>
            <comment>the table ends before this age</comment>
            <translation>ينتهي الجدول قبل هذا العمر</translation>
        </message>
        <message>
            <source>the targets lie too near to each other, or their place isn't known</source>
            <comment>the targets lie too near to each other, or their place isn't known</comment>
            <translation>الهدفان متقاربان جدًا، أو مكانهما غير معروف</translation>
        </message>
        <message>
            <source>the test lasts 30 seconds, this set did not</source>
            <comment>the test lasts 30 seconds, this set did not</comment>
            <translation>مدة الاختبار 30 ثانية، وليست كذلك هذه المجموعة</translation>
        </message>
        <message>
            <source>the therapist found it met on {day}</source>
            <comment>the therapist found it met on {day}</comment>
            <translation>وجده المعالج متحققًا في {day}</translation>
        </message>
        <message>
            <source>the way of the roll, where the width between the shoulders does not tell it</source>
            <comment>the way of the roll, where the width between the shoulders does not tell it</comment>
            <translation>اتجاه الدوران، حيث لا يدل عليه العرض بين الكتفين</translation>
        </message>
        <message>
            <source>throw too low</source>
            <comment>throw too low</comment>
            <translation>رمية منخفضة</translation>
        </message>
        <message>
            <source>time held</source>
            <comment>time held</comment>
            <translation>مدة الثبات</translation>
        </message>
        <message>
            <source>time in all</source>
            <comment>time in all</comment>
            <translation>الوقت كله</translation>
        </message>
        <message>
            <source>time that was measured</source>
            <comment>time that was measured</comment>
            <translation>الوقت المقيس</translation>
        </message>
        <message>
            <source>time to settle</source>
            <comment>time to settle</comment>
            <translation>الوقت حتى الهدوء</translation>
        </message>
        <message>
            <source>tingling arm</source>
            <comment>tingling arm</comment>
            <translation>وخز في الذراع</translation>
        </message>
        <message>
            <source>told of falls in the last week: {what}</source>
            <comment>told of falls in the last week: {what}</comment>
            <translation>ذكر سقوطًا في الأسبوع الماضي: {what}</translation>
        </message>
        <message>
            <source>too dark</source>
            <comment>too dark</comment>
            <translation>مظلم جدًا</translation>
        </message>
        <message>
            <source>too far from the camera</source>
            <comment>too far from the camera</comment>
            <translation>بعيد جدًا عن الكاميرا</translation>
        </message>
        <message>
            <source>too few frames</source>
            <comment>too few frames</comment>
            <translation>صور قليلة جدًا</translation>
        </message>
        <message>
            <source>too few pictures a second for so fast a movement</source>
            <comment>too few pictures a second for so fast a movement</comment>
            <translation>الصور في الثانية أقل مما تحتاجه حركة بهذه السرعة</translation>
        </message>
        <message>
            <source>too few samples in a turn</source>
            <comment>too few samples in a turn</comment>
            <translation>عينات قليلة جدًا في الحركة</translation>
        </message>
        <message>
            <source>too few turns or samples to tell</source>
            <comment>too few turns or samples to tell</comment>
            <translation>الحركات أو القياسات أقل من أن تكفي لمعرفة ذلك</translation>
        </message>
        <message>
            <source>too few turns with the eyes measured at both ends</source>
            <comment>too few turns with the eyes measured at both ends</comment>
            <translation>حركات قليلة جدًا قيست فيها العينان عند الطرفين</translation>
        </message>
        <message>
            <source>too little was measured: a stand may be missing</source>
            <comment>too little was measured: a stand may be missing</comment>
            <translation>قيس القليل جدًا: قد تنقص قومة</translation>
        </message>
        <message>
            <source>too uneven to tell</source>
            <comment>too uneven to tell</comment>
            <translation>التشتت أكبر من أن يُعرف ذلك</translation>
        </message>
        <message>
            <source>turned farther than the set-up holds</source>
            <comment>turned farther than the set-up holds</comment>
            <translation>لفّ الرأس أبعد مما يشمله الإعداد</translation>
        </message>
        <message>
            <source>turned farther than the set-up holds: its error there is not known</source>
            <comment>turned farther than the set-up holds: its error there is not known</comment>
            <translation>الدوران أبعد مما يشمله الإعداد: خطؤه هناك غير معروف</translation>
        </message>
        <message>
            <source>typed in</source>
            <comment>typed in</comment>
            <translation>أُدخلت كتابةً</translation>
        </message>
        <message>
            <source>unable to stand or walk</source>
            <comment>unable to stand or walk</comment>
            <translation>عجز عن الوقوف أو المشي</translation>
        </message>
        <message>
            <source>uncertainty</source>
            <comment>uncertainty</comment>
            <translation>عدم اليقين</translation>
        </message>
        <message>
            <source>unsteadiness after</source>
            <comment>unsteadiness after</comment>
            <translation>عدم الثبات بعد</translation>
        </message>
        <message>
            <source>unsteadiness before</source>
            <comment>unsteadiness before</comment>
            <translation>عدم الثبات قبل</translation>
        </message>
        <message>
            <source>up</source>
            <comment>up</comment>
            <translation>أعلى</translation>
        </message>
        <message>
            <source>usual value</source>
            <comment>usual value</comment>
            <translation>القيمة المعتادة</translation>
        </message>
        <message>
            <source>vergence change</source>
            <comment>vergence change</comment>
            <translation>تغير التقارب</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>walking</comment>
            <translation>ماشيًا</translation>
        </message>
        <message>
            <source>weakness or numbness of face, arm or leg</source>
            <comment>weakness or numbness of face, arm or leg</comment>
            <translation>ضعف أو خدر في الوجه أو الذراع أو الساق</translation>
        </message>
        <message>
            <source>went along</source>
            <comment>went along</comment>
            <translation>تحرك معها</translation>
        </message>
        <message>
            <source>went on, as the therapist had said today</source>
            <comment>went on, as the therapist had said today</comment>
            <translation>تابع كما قال المعالج اليوم</translation>
        </message>
        <message>
            <source>what it is counted from was never measured</source>
            <comment>what it is counted from was never measured</comment>
            <translation>ما يُعدّ منه لم يُقس قط</translation>
        </message>
        <message>
            <source>where the eyes point behind shut lids (asked when they open)</source>
            <comment>where the eyes point behind shut lids (asked when they open)</comment>
            <translation>إلى أين تتجه العينان خلف الجفون المغلقة (يُسأل عند فتحهما)</translation>
        </message>
        <message>
            <source>whether the eyes followed the object (whether the head went along is told)</source>
            <comment>whether the eyes followed the object (whether the head went along is told)</comment>
            <translation>هل تتبعت العينان الشيء (ويُذكر إن كان الرأس قد تحرك معه)</translation>
        </message>
        <message>
            <source>whether the target was clear (asked after the set)</source>
            <comment>whether the target was clear (asked after the set)</comment>
            <translation>هل كان الهدف واضحًا (يُسأل بعد المجموعة)</translation>
        </message>
        <message>
            <source>whether there was a set-up is not known, nor its error</source>
            <comment>whether there was a set-up is not known, nor its error</comment>
            <translation>لا يُعرف هل كان هناك إعداد، ولا يُعرف خطؤه</translation>
        </message>
        <message>
            <source>which arm, unless both wrists are seen in the bend (then it is asked)</source>
            <comment>which arm, unless both wrists are seen in the bend (then it is asked)</comment>
            <translation>أي ذراع، إلا إذا ظهر المعصمان عند الانحناء (وإلا فيُسأل عنها)</translation>
        </message>
        <message>
            <source>who looks at the floor lowers the lids, which reads as shut eyes</source>
            <comment>who looks at the floor lowers the lids, which reads as shut eyes</comment>
            <translation>من ينظر إلى الأرض يخفض جفنيه، فيبدو ذلك كعينين مغمضتين</translation>
        </message>
        <message>
            <source>why</source>
            <comment>why</comment>
            <translation>السبب</translation>
        </message>
        <message>
            <source>without a set-up its error is not known</source>
            <comment>without a set-up its error is not known</comment>
            <translation>من دون إعداد لا يُعرف خطؤه</translation>
        </message>
        <message>
            <source>x1 viewing, pitch</source>
            <comment>x1 viewing, pitch</comment>
            <translation>تثبيت x1، أعلى وأسفل</translation>
        </message>
        <message>
            <source>x1 viewing, pitch: the head nods, the eyes stay on a still target</source>
            <comment>x1 viewing, pitch: the head nods, the eyes stay on a still target</comment>
            <translation>تثبيت x1، أعلى وأسفل: يتحرك الرأس، وتبقى العينان على هدف ثابت</translation>
        </message>
        <message>
            <source>x1 viewing, yaw</source>
            <comment>x1 viewing, yaw</comment>
            <translation>تثبيت x1، يمين ويسار</translation>
        </message>
        <message>
            <source>x1 viewing, yaw: the head turns, the eyes stay on a still target</source>
            <comment>x1 viewing, yaw: the head turns, the eyes stay on a still target</comment>
            <translation>تثبيت x1، يمين ويسار: يدور الرأس، وتبقى العينان على هدف ثابت</translation>
        </message>
        <message>
            <source>x2 viewing, pitch</source>
            <comment>x2 viewing, pitch</comment>
            <translation>تثبيت x2، أعلى وأسفل</translation>
        </message>
        <message>
            <source>x2 viewing, pitch: the target moves against the head, the eyes stay on it</source>
            <comment>x2 viewing, pitch: the target moves against the head, the eyes stay on it</comment>
            <translation>تثبيت x2، أعلى وأسفل: يتحرك الهدف عكس الرأس، وتبقى العينان عليه</translation>
        </message>
        <message>
            <source>x2 viewing, yaw</source>
            <comment>x2 viewing, yaw</comment>
            <translation>تثبيت x2، يمين ويسار</translation>
        </message>
        <message>
            <source>x2 viewing, yaw: the target moves against the head, the eyes stay on it</source>
            <comment>x2 viewing, yaw: the target moves against the head, the eyes stay on it</comment>
            <translation>تثبيت x2، يمين ويسار: يتحرك الهدف عكس الرأس، وتبقى العينان عليه</translation>
        </message>
        <message>
            <source>yes</source>
            <comment>yes</comment>
            <translation>نعم</translation>
        </message>
        <message>
            <source>yes to: {what}</source>
            <comment>yes to: {what}</comment>
            <translation>نعم لـ: {what}</translation>
        </message>
        <message>
            <source>{count} bouts a day</source>
            <comment>{count} bouts a day</comment>
            <translation>التمرينات في اليوم {count}</translation>
        </message>
        <message>
            <source>{count} lines could not be read</source>
            <comment>{count} lines could not be read</comment>
            <translation>أسطر تعذرت قراءتها: {count}</translation>
        </message>
        <message>
            <source>{count} lines could not be read, the first one too: whose it is and of which plan is not known</source>
            <comment>{count} lines could not be read, the first one too: whose it is and of which plan is not known</comment>
            <translation>أسطر تعذرت قراءتها: {count}، ومنها الأول: لا يُعرف لمن هي ولا لأي خطة</translation>
        </message>
        <message>
            <source>{count} lines could not be read, the first one too: whose it is and of which plan is not known; it may be from the sample</source>
            <comment>{count} lines could not be read, the first one too: whose it is and of which plan is not known; it may be from the sample</comment>
            <translation>أسطر تعذرت قراءتها: {count}، ومنها الأول: لا يُعرف لمن هي ولا لأي خطة؛ وقد تكون من المثال</translation>
        </message>
        <message>
            <source>{count} of {needed} sessions</source>
            <comment>{count} of {needed} sessions</comment>
            <translation>{count} من {needed} جلسات</translation>
        </message>
        <message>
            <source>{count} plan files differ and start on the same day: the newest file is taken</source>
            <comment>{count} plan files differ and start on the same day: the newest file is taken</comment>
            <translation>{count} من ملفات الخطط تختلف وتبدأ في اليوم نفسه: يؤخذ أحدثها</translation>
        </message>
        <message>
            <source>{first} to {last} beats a minute</source>
            <comment>{first} to {last} beats a minute</comment>
            <translation>من {first} إلى {last} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}</source>
            <comment>{gaze}; planned {planned}</comment>
            <translation>{gaze}؛ المخطط {planned}</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}; guideline, as quoted: {least} or more</source>
            <comment>{gaze}; planned {planned}; guideline, as quoted: {least} or more</comment>
            <translation>{gaze}؛ المخطط {planned}؛ الدليل الإرشادي كما يُنقل عنه: {least} أو أكثر</translation>
        </message>
        <message>
            <source>{gaze}; planned {planned}; guideline, as quoted: {least} to {most}</source>
            <comment>{gaze}; planned {planned}; guideline, as quoted: {least} to {most}</comment>
            <translation>{gaze}؛ المخطط {planned}؛ الدليل الإرشادي كما يُنقل عنه: من {least} إلى {most}</translation>
        </message>
        <message>
            <source>{least} to {most} degrees to each side</source>
            <comment>{least} to {most} degrees to each side</comment>
            <translation>من {least} إلى {most} درجة إلى كل جانب</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <comment>{low} to {high}</comment>
            <translation>من {low} إلى {high}</translation>
        </message>
        <message>
            <source>{number} ± {most}</source>
            <comment>{number} ± {most}</comment>
            <translation>{number} ± {most}</translation>
        </message>
        <message>
            <source>{opening}: met; {why}</source>
            <comment>{opening}: met; {why}</comment>
            <translation>{opening}: متحقق؛ {why}</translation>
        </message>
        <message>
            <source>{opening}: not met; {why}</source>
            <comment>{opening}: not met; {why}</comment>
            <translation>{opening}: غير متحقق؛ {why}</translation>
        </message>
        <message>
            <source>{practice}, and {count} beyond a day's dose</source>
            <comment>{practice}, and {count} beyond a day's dose</comment>
            <translation>{practice}، و{count} فوق جرعة اليوم</translation>
        </message>
        <message>
            <source>{practice}; asked: {bouts} a day on {days} days; done {share} %</source>
            <comment>{practice}; asked: {bouts} a day on {days} days; done {share} %</comment>
            <translation>{practice}؛ المطلوب: {bouts} في اليوم، في {days} من الأيام؛ المنجز {share} %</translation>
        </message>
        <message>
            <source>{practice}; no plan at hand to compare with</source>
            <comment>{practice}; no plan at hand to compare with</comment>
            <translation>{practice}؛ لا خطة متاحة للمقارنة</translation>
        </message>
        <message>
            <source>{rate} on the one day counted ({measured} measured, {reported} not seen by the camera)</source>
            <comment>{rate} on the one day counted ({measured} measured, {reported} not seen by the camera)</comment>
            <translation>{rate}، في اليوم الوحيد المحسوب ({measured} مقيسة، {reported} لم ترها الكاميرا)</translation>
        </message>
        <message>
            <source>{rate} on {days} days a week in the last {length} days ({measured} measured, {reported} not seen by the camera)</source>
            <comment>{rate} on {days} days a week in the last {length} days ({measured} measured, {reported} not seen by the camera)</comment>
            <translation>{rate}، والأيام في الأسبوع {days}، خلال آخر {length} من الأيام ({measured} مقيسة، {reported} لم ترها الكاميرا)</translation>
        </message>
        <message>
            <source>{share} % of the time</source>
            <comment>{share} % of the time</comment>
            <translation>{share} % من الوقت</translation>
        </message>
        <message>
            <source>{share} % of the time fewer than {value} pictures a second</source>
            <comment>{share} % of the time fewer than {value} pictures a second</comment>
            <translation>{share} % من الوقت أقل من {value} صورة في الثانية</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes looked unlike those of the set-up (another light, or other glasses)</source>
            <comment>{share} % of the time the eyes looked unlike those of the set-up (another light, or other glasses)</comment>
            <translation>{share} % من الوقت بدت العينان مختلفتين عما في الإعداد (ضوء آخر أو نظارة أخرى)</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes went beyond the set-up's range</source>
            <comment>{share} % of the time the eyes went beyond the set-up's range</comment>
            <translation>{share} % من الوقت تجاوزت العينان مدى الإعداد</translation>
        </message>
        <message>
            <source>{share} % of the time the eyes were not read: they looked unlike those of the set-up (another light, or other glasses)</source>
            <comment>{share} % of the time the eyes were not read: they looked unlike those of the set-up (another light, or other glasses)</comment>
            <translation>{share} % من الوقت لم تُقرأ العينان: بدتا مختلفتين عما في الإعداد (ضوء آخر أو نظارة أخرى)</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>{tempo} beats a minute</comment>
            <translation>{tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>{text} ({count} sessions, the gravest one shown)</source>
            <comment>{text} ({count} sessions, the gravest one shown)</comment>
            <translation>{text} (عدد الجلسات {count}، تُعرض الأخطر)</translation>
        </message>
        <message>
            <source>{text} ({count} sessions, the last one shown)</source>
            <comment>{text} ({count} sessions, the last one shown)</comment>
            <translation>{text} (عدد الجلسات {count}، تُعرض الأخيرة)</translation>
        </message>
        <message>
            <source>{value} beats/min</source>
            <comment>{value} beats/min</comment>
            <translation>{value} نقرة/د</translation>
        </message>
        <message>
            <source>{value} frames/s</source>
            <comment>{value} frames/s</comment>
            <translation>{value} صورة/ث</translation>
        </message>
        <message>
            <source>{value} of 10</source>
            <comment>{value} of 10</comment>
            <translation>{value} من 10</translation>
        </message>
        <message>
            <source>{value} pictures a second</source>
            <comment>{value} pictures a second</comment>
            <translation>{value} صورة في الثانية</translation>
        </message>
        <message>
            <source>{what} rose from {first} to {last} of 10</source>
            <comment>{what} rose from {first} to {last} of 10</comment>
            <translation>{what} ارتفعت من {first} إلى {last} من 10</translation>
        </message>
        <message>
            <source>{what}: from week {week} on ({day}): {dose}</source>
            <comment>{what}: from week {week} on ({day}): {dose}</comment>
            <translation>{what}: من الأسبوع {week} ({day}): {dose}</translation>
        </message>
        <message>
            <source>{why} and {count} more</source>
            <comment>{why} and {count} more</comment>
            <translation>{why} و{count} غيرها</translation>
        </message>
        <message>
            <source>{words} (opens {what})</source>
            <comment>{words} (opens {what})</comment>
            <translation>{words} (يفتح {what})</translation>
        </message>
        <message>
            <source>{words} (opens {what}, practised already)</source>
            <comment>{words} (opens {what}, practised already)</comment>
            <translation>{words} (يفتح {what}، تُمرن عليه من قبل)</translation>
        </message>
    </context>
    <context>
        <name>turnpost</name>
        <message>
            <source>Repeat: {part}</source>
            <comment>again.before</comment>
            <translation>إعادة: {part}</translation>
        </message>
        <message>
            <source>{part}: the newer check counts now.</source>
            <comment>again.check</comment>
            <translation>{part}: يُعتمد الآن الفحص الأحدث.</translation>
        </message>
        <message>
            <source>Do this step again</source>
            <comment>again.do</comment>
            <translation>إعادة هذه الخطوة</translation>
        </message>
        <message>
            <source>Single steps can be done again only right after the set-up.</source>
            <comment>again.gone</comment>
            <translation>لا يمكن إعادة خطوات مفردة إلا بعد الإعداد مباشرة.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your face was seen less well.</source>
            <comment>again.kept.coarse</comment>
            <translation>{part}: تبقى الخطوة السابقة. هذه المرة ظهر وجهك بصورة أسوأ.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. With the new one it is harder to tell where you look.</source>
            <comment>again.kept.eyes</comment>
            <translation>{part}: تبقى الخطوة السابقة. مع الجديدة تصعب معرفة إلى أين تنظر.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. The new one could not be used. {why}</source>
            <comment>again.kept.failed</comment>
            <translation>{part}: تبقى الخطوة السابقة. تعذّر استخدام الجديدة. {why}</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. The new one was not finished.</source>
            <comment>again.kept.left</comment>
            <translation>{part}: تبقى الخطوة السابقة. لم تكتمل الجديدة.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your head went less far.</source>
            <comment>again.kept.less_far</comment>
            <translation>{part}: تبقى الخطوة السابقة. هذه المرة وصل رأسك إلى مسافة أقل.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. You sit or hold your head differently now. If you have moved, repeat the whole set-up.</source>
            <comment>again.kept.moved</comment>
            <translation>{part}: تبقى الخطوة السابقة. جلستك أو وضع رأسك مختلف الآن. إن غيّرت مكانك فأعد الإعداد كله.</translation>
        </message>
        <message>
            <source>{part}: the earlier step is kept. This time your face was hardly seen.</source>
            <comment>again.kept.unseen</comment>
            <translation>{part}: تبقى الخطوة السابقة. هذه المرة لم يُرَ وجهك إلا قليلًا.</translation>
        </message>
        <message>
            <source>{part}: do this step again</source>
            <comment>again.name</comment>
            <translation>{part}: إعادة هذه الخطوة</translation>
        </message>
        <message>
            <source>One step can be done again while you sit as before. If you have moved, repeat the whole set-up.</source>
            <comment>again.sits</comment>
            <translation>يمكن إعادة خطوة واحدة ما دمت جالسًا كما كنت. إن غيّرت مكانك فأعد الإعداد كله.</translation>
        </message>
        <message>
            <source>{part}: the new step is used now.</source>
            <comment>again.taken</comment>
            <translation>{part}: تُستخدم الآن الخطوة الجديدة.</translation>
        </message>
        <message>
            <source>Which arm did you reach with?</source>
            <comment>ask.arm</comment>
            <translation>بأي ذراع وصلت إلى الأرض؟</translation>
        </message>
        <message>
            <source>Both, in turn</source>
            <comment>ask.arm.both</comment>
            <translation>بكلتيهما، بالتناوب</translation>
        </message>
        <message>
            <source>My left</source>
            <comment>ask.arm.left</comment>
            <translation>باليسرى</translation>
        </message>
        <message>
            <source>Not sure</source>
            <comment>ask.arm.not_sure</comment>
            <translation>لست متأكدًا</translation>
        </message>
        <message>
            <source>My right</source>
            <comment>ask.arm.right</comment>
            <translation>باليمنى</translation>
        </message>
        <message>
            <source>How did the target look while you moved?</source>
            <comment>ask.clarity</comment>
            <translation>كيف بدا الهدف وأنت تتحرك؟</translation>
        </message>
        <message>
            <source>Blurred</source>
            <comment>ask.clarity.blurred</comment>
            <translation>غير واضح</translation>
        </message>
        <message>
            <source>Clear</source>
            <comment>ask.clarity.clear</comment>
            <translation>واضحًا</translation>
        </message>
        <message>
            <source>I saw two</source>
            <comment>ask.clarity.double</comment>
            <translation>رأيت اثنين</translation>
        </message>
        <message>
            <source>It jumped</source>
            <comment>ask.clarity.jumping</comment>
            <translation>كان يقفز</translation>
        </message>
        <message>
            <source>How did the target look when you opened your eyes?</source>
            <comment>ask.clarity.opened</comment>
            <translation>كيف بدا الهدف عندما فتحت عينيك؟</translation>
        </message>
        <message>
            <source>The camera counted {count}.</source>
            <comment>ask.did</comment>
            <translation>عدّت الكاميرا {count}.</translation>
        </message>
        <message>
            <source>Your last nod down: {degrees} degrees.</source>
            <comment>ask.did.down</comment>
            <translation>آخر إيماءة إلى أسفل بالدرجات: {degrees}.</translation>
        </message>
        <message>
            <source>Your last turn left: {degrees} degrees.</source>
            <comment>ask.did.left</comment>
            <translation>آخر لفتة إلى اليسار بالدرجات: {degrees}.</translation>
        </message>
        <message>
            <source>Your last nods: {first} degrees up, {second} degrees down.</source>
            <comment>ask.did.nods</comment>
            <translation>آخر إيماءات رأسك: إلى أعلى بالدرجات {first}، إلى أسفل بالدرجات {second}.</translation>
        </message>
        <message>
            <source>The camera counted {count} of {goal}.</source>
            <comment>ask.did.of</comment>
            <translation>عدّت الكاميرا {count} من {goal}.</translation>
        </message>
        <message>
            <source>Your last turn right: {degrees} degrees.</source>
            <comment>ask.did.right</comment>
            <translation>آخر لفتة إلى اليمين بالدرجات: {degrees}.</translation>
        </message>
        <message>
            <source>Your tempo: {tempo} a minute.</source>
            <comment>ask.did.tempo</comment>
            <translation>إيقاعك: {tempo} في الدقيقة.</translation>
        </message>
        <message>
            <source>Your last turns: {first} degrees right, {second} degrees left.</source>
            <comment>ask.did.turns</comment>
            <translation>آخر لفتات رأسك: إلى اليمين بالدرجات {first}، إلى اليسار بالدرجات {second}.</translation>
        </message>
        <message>
            <source>Your last nod up: {degrees} degrees.</source>
            <comment>ask.did.up</comment>
            <translation>آخر إيماءة إلى أعلى بالدرجات: {degrees}.</translation>
        </message>
        <message>
            <source>Done</source>
            <comment>ask.done</comment>
            <translation>تم</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>ask.dose.eyes_closed</comment>
            <translation>العينان مغمضتان</translation>
        </message>
        <message>
            <source>on the firm floor</source>
            <comment>ask.dose.firm</comment>
            <translation>على الأرض الثابتة</translation>
        </message>
        <message>
            <source>{first} beats a minute at first, {last} at the end</source>
            <comment>ask.dose.from_to</comment>
            <translation>{first} نقرة في الدقيقة في البداية، {last} في النهاية</translation>
        </message>
        <message>
            <source>once</source>
            <comment>ask.dose.once</comment>
            <translation>مرة واحدة</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>ask.dose.repetitions</comment>
            <translation>عدد المرات {count}</translation>
        </message>
        <message>
            <source>{count} seconds</source>
            <comment>ask.dose.seconds</comment>
            <translation>{count} من الثواني</translation>
        </message>
        <message>
            <source>turning your head</source>
            <comment>ask.dose.shake</comment>
            <translation>مع إدارة الرأس</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>ask.dose.sitting</comment>
            <translation>جلوسًا</translation>
        </message>
        <message>
            <source>on the soft mat</source>
            <comment>ask.dose.soft</comment>
            <translation>على الحصيرة اللينة</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>ask.dose.standing</comment>
            <translation>وقوفًا</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>ask.dose.tempo</comment>
            <translation>{tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>ask.dose.walking</comment>
            <translation>مشيًا</translation>
        </message>
        <message>
            <source>with notes on the wall</source>
            <comment>ask.dose.wall</comment>
            <translation>بأوراق على الجدار</translation>
        </message>
        <message>
            <source>End for today</source>
            <comment>ask.end</comment>
            <translation>إنهاء اليوم</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>ask.go_on</comment>
            <translation>متابعة</translation>
        </message>
        <message>
            <source>Say it again</source>
            <comment>ask.guide.again</comment>
            <translation>أعد القول</translation>
        </message>
        <message>
            <source>Next step</source>
            <comment>ask.guide.next</comment>
            <translation>الخطوة التالية</translation>
        </message>
        <message>
            <source>When you opened your eyes, did they still point at the target?</source>
            <comment>ask.landed</comment>
            <translation>عندما فتحت عينيك، هل كانتا ما زالتا نحو الهدف؟</translation>
        </message>
        <message>
            <source>No, beside it</source>
            <comment>ask.landed.beside</comment>
            <translation>لا، بجانبه</translation>
        </message>
        <message>
            <source>Not sure</source>
            <comment>ask.landed.not_sure</comment>
            <translation>لست متأكدًا</translation>
        </message>
        <message>
            <source>Yes, at the target</source>
            <comment>ask.landed.on</comment>
            <translation>نعم، نحو الهدف</translation>
        </message>
        <message>
            <source>{time} left</source>
            <comment>ask.left</comment>
            <translation>بقي {time}</translation>
        </message>
        <message>
            <source>Left out today: {name}. {why}</source>
            <comment>ask.left_out</comment>
            <translation>لن يُفعل اليوم: {name}. {why}</translation>
        </message>
        <message>
            <source>No</source>
            <comment>ask.no</comment>
            <translation>لا</translation>
        </message>
        <message>
            <source>How many did you do?</source>
            <comment>ask.own_count</comment>
            <translation>كم مرة فعلت؟</translation>
        </message>
        <message>
            <source>Press + and − until your number is there.</source>
            <comment>ask.own_count.how</comment>
            <translation>اضغط + و − حتى يظهر عددك.</translation>
        </message>
        <message>
            <source>Count</source>
            <comment>ask.own_count.name</comment>
            <translation>العدد</translation>
        </message>
        <message>
            <source>I don't know</source>
            <comment>ask.own_count.unknown</comment>
            <translation>لا أعرف</translation>
        </message>
        <message>
            <source>no number chosen yet</source>
            <comment>ask.own_count.unset</comment>
            <translation>لم يُختر عدد بعد</translation>
        </message>
        <message>
            <source>Sit on a firm chair, at arm's length from the screen, about {cm} cm.</source>
            <comment>ask.place.arm</comment>
            <translation>اجلس على كرسي ثابت على بعد ذراع من الشاشة، أي نحو {cm} سم.</translation>
        </message>
        <message>
            <source>Stripes will move on the screen. This can make you dizzy or sick. Any key stops it at once.</source>
            <comment>ask.place.backdrop</comment>
            <translation>ستتحرك خطوط على الشاشة. قد يسبب لك ذلك دوخة أو غثيانًا. أي مفتاح يوقفها فورًا.</translation>
        </message>
        <message>
            <source>I have read this and am in place</source>
            <comment>ask.place.backdrop_ready</comment>
            <translation>قرأت هذا وأنا في مكاني</translation>
        </message>
        <message>
            <source>Slow beats lead you in. Three quick beats tell you that it is over.</source>
            <comment>ask.place.by_ear</comment>
            <translation>تقودك نقرات بطيئة إلى البداية. وثلاث نقرات سريعة تخبرك بأنه انتهى.</translation>
        </message>
        <message>
            <source>No sound plays. The screen counts down and shows when it is over: your helper reads that to you.</source>
            <comment>ask.place.by_reader</comment>
            <translation>لا يوجد صوت. تعدّ الشاشة تنازليًا وتُظهر متى ينتهي: من يساعدك يقرأ لك ذلك.</translation>
        </message>
        <message>
            <source>A voice tells you when to begin and when it is over. Slow beats lead you in.</source>
            <comment>ask.place.by_voice</comment>
            <translation>يقول لك صوت متى تبدأ ومتى ينتهي. تقودك نقرات بطيئة إلى البداية.</translation>
        </message>
        <message>
            <source>Move your chair closer again, about {cm} cm from the screen.</source>
            <comment>ask.place.closer</comment>
            <translation>قرّب كرسيك من جديد، على بعد نحو {cm} سم من الشاشة.</translation>
        </message>
        <message>
            <source>As soon as you see two tips, press “I see double (D)”.</source>
            <comment>ask.place.double</comment>
            <translation>حالما ترى طرفين، اضغط «أرى شيئين (D)».</translation>
        </message>
        <message>
            <source>Sit further back for this one, on a firm chair, about {cm} cm from the screen.</source>
            <comment>ask.place.further</comment>
            <translation>اجلس أبعد إلى الخلف لهذا التمرين، على كرسي ثابت، على بعد نحو {cm} سم من الشاشة.</translation>
        </message>
        <message>
            <source>You have asked for a still screen. Here the target has to move: that is the exercise. Leave it out if you would rather not.</source>
            <comment>ask.place.moves</comment>
            <translation>طلبت شاشة ثابتة. وهنا يجب أن يتحرك الهدف: هذا هو التمرين. اتركه إن كنت تفضل ذلك.</translation>
        </message>
        <message>
            <source>Move at a calm, even pace.</source>
            <comment>ask.place.no_beat</comment>
            <translation>تحرك بهدوء وبسرعة ثابتة.</translation>
        </message>
        <message>
            <source>You chose to hear nothing. This one is led by sound all the same.</source>
            <comment>ask.place.not_silent</comment>
            <translation>اخترت ألا تسمع شيئًا. ومع ذلك يقود الصوت هذا التمرين.</translation>
        </message>
        <message>
            <source>I am in place</source>
            <comment>ask.place.ready</comment>
            <translation>أنا في مكاني</translation>
        </message>
        <message>
            <source>First the camera gets to know how you look from here. That takes a minute.</source>
            <comment>ask.place.setup</comment>
            <translation>تتعرف الكاميرا أولًا على شكلك من هنا. يستغرق ذلك دقيقة.</translation>
        </message>
        <message>
            <source>Sit on a firm chair, about {cm} cm from the screen.</source>
            <comment>ask.place.sitting</comment>
            <translation>اجلس على كرسي ثابت على بعد نحو {cm} سم من الشاشة.</translation>
        </message>
        <message>
            <source>Not this one</source>
            <comment>ask.place.skip</comment>
            <translation>ليس هذا</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face. Look at a mark on the wall behind it, as high as your eyes.</source>
            <comment>ask.place.standing</comment>
            <translation>قف بحيث ترى الكاميرا وجهك. انظر إلى علامة على الجدار خلفها، بارتفاع عينيك.</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face. Until it begins, look at a mark on the wall behind it, as high as your eyes.</source>
            <comment>ask.place.standing_shut</comment>
            <translation>قف بحيث ترى الكاميرا وجهك. إلى أن يبدأ التمرين انظر إلى علامة على الجدار خلفها، بارتفاع عينيك.</translation>
        </message>
        <message>
            <source>Stand so that the camera sees your face, and look over the screen at the wall.</source>
            <comment>ask.place.standing_wall</comment>
            <translation>قف بحيث ترى الكاميرا وجهك، وانظر من فوق الشاشة إلى الجدار.</translation>
        </message>
        <message>
            <source>To stop, sit down, or hold one hand up beside your head. Or step out of the picture for a few seconds.</source>
            <comment>ask.place.to_stop</comment>
            <translation>للتوقف، اجلس، أو ارفع يدًا بجانب رأسك. أو اخرج من الصورة بضع ثوانٍ.</translation>
        </message>
        <message>
            <source>To stop, hold one hand up beside your head. Or step aside, out of the picture, for a few seconds.</source>
            <comment>ask.place.to_stop_aside</comment>
            <translation>للتوقف، ارفع يدًا بجانب رأسك. أو تنحَّ جانبًا خارج الصورة بضع ثوانٍ.</translation>
        </message>
        <message>
            <source>To stop, hold one hand up beside your head.</source>
            <comment>ask.place.to_stop_hand</comment>
            <translation>للتوقف، ارفع يدًا بجانب رأسك.</translation>
        </message>
        <message>
            <source>The camera does not see: {what}.</source>
            <comment>ask.place.unseen</comment>
            <translation>لا ترى الكاميرا: {what}.</translation>
        </message>
        <message>
            <source>The camera does not watch this one. Press “Done” when you are through.</source>
            <comment>ask.place.walking</comment>
            <translation>لا تتابع الكاميرا هذا. اضغط «تم» عندما تنتهي.</translation>
        </message>
        <message>
            <source>Is somebody with you who reads to you?</source>
            <comment>ask.reader</comment>
            <translation>هل معك شخص يقرأ لك؟</translation>
        </message>
        <message>
            <source>They read the words on the screen aloud and tell you when to stop.</source>
            <comment>ask.reader.how</comment>
            <translation>يقرأ الكلمات التي على الشاشة بصوت عالٍ ويقول لك متى تتوقف.</translation>
        </message>
        <message>
            <source>This computer can't speak, and what comes now is led by spoken words.</source>
            <comment>ask.reader.no_words</comment>
            <translation>لا يستطيع هذا الحاسوب الكلام، وما يأتي الآن يُقاد بكلمات منطوقة.</translation>
        </message>
        <message>
            <source>This computer can't play a sound, and what comes now is led by sound.</source>
            <comment>ask.reader.silent</comment>
            <translation>لا يستطيع هذا الحاسوب تشغيل الصوت، وما يأتي الآن يقوده الصوت.</translation>
        </message>
        <message>
            <source>A short rest</source>
            <comment>ask.rest</comment>
            <translation>راحة قصيرة</translation>
        </message>
        <message>
            <source>Go on now</source>
            <comment>ask.rest.go_on</comment>
            <translation>متابعة الآن</translation>
        </message>
        <message>
            <source>Next: {name}</source>
            <comment>ask.rest.next</comment>
            <translation>التالي: {name}</translation>
        </message>
        <message>
            <source>Rest until you feel as usual</source>
            <comment>ask.settle</comment>
            <translation>استرح حتى تشعر كالمعتاد</translation>
        </message>
        <message>
            <source>I feel as usual again</source>
            <comment>ask.settle.done</comment>
            <translation>أشعر كالمعتاد من جديد</translation>
        </message>
        <message>
            <source>Take your time. If you don't feel as usual by then, that is all for today.</source>
            <comment>ask.settle.how</comment>
            <translation>خذ وقتك. إذا لم تشعر كالمعتاد حتى ذلك الحين، فهذا كل شيء لليوم.</translation>
        </message>
        <message>
            <source>Did you hear the beats just now?</source>
            <comment>ask.sound</comment>
            <translation>هل سمعت النقرات الآن؟</translation>
        </message>
        <message>
            <source>Play again</source>
            <comment>ask.sound.again</comment>
            <translation>تشغيل مرة أخرى</translation>
        </message>
        <message>
            <source>What comes now is led by sound. Turn it up if you need to.</source>
            <comment>ask.sound.how</comment>
            <translation>ما يأتي الآن يقوده الصوت. ارفع الصوت إن احتجت.</translation>
        </message>
        <message>
            <source>Hear the voice</source>
            <comment>ask.sound.voice</comment>
            <translation>سماع الصوت</translation>
        </message>
        <message>
            <source>Something new may come now</source>
            <comment>ask.stage</comment>
            <translation>قد يأتي الآن شيء جديد</translation>
        </message>
        <message>
            <source>Your plan has a next part: {name}. You may begin with it today, or wait. Do you want to begin?</source>
            <comment>ask.stage.how</comment>
            <translation>في خطتك جزء تالٍ: {name}. يمكنك أن تبدأ به اليوم أو أن تنتظر. هل تريد أن تبدأ؟</translation>
        </message>
        <message>
            <source>Did you have to hold on?</source>
            <comment>ask.steadied</comment>
            <translation>هل اضطررت إلى الإمساك بشيء؟</translation>
        </message>
        <message>
            <source>To sway a little is normal. Holding on was right if you needed it.</source>
            <comment>ask.steadied.how</comment>
            <translation>التمايل القليل طبيعي. وكان الإمساك صحيحًا إن احتجت إليه.</translation>
        </message>
        <message>
            <source>Is your corner ready?</source>
            <comment>ask.support.corner_and_chair</comment>
            <translation>هل ركنك جاهز؟</translation>
        </message>
        <message>
            <source>Your back is to a corner. A chair that does not roll stands in front of you, to hold on to. The laptop stands firm, farther away than your arm reaches, its cable out of the way.</source>
            <comment>ask.support.corner_and_chair.how</comment>
            <translation>ظهرك إلى الركن. وأمامك كرسي لا يتدحرج، لتمسك به. والحاسوب المحمول ثابت، أبعد مما تصل إليه ذراعك، وسلكه بعيد عن الطريق.</translation>
        </message>
        <message>
            <source>The camera can't hold you, and it calls nobody.</source>
            <comment>ask.support.fall</comment>
            <translation>لا تستطيع الكاميرا أن تمسك بك، ولا تتصل بأحد.</translation>
        </message>
        <message>
            <source>Is your helper next to you?</source>
            <comment>ask.support.helper</comment>
            <translation>هل من يساعدك بجانبك؟</translation>
        </message>
        <message>
            <source>Your helper stands so near that a hand can hold you, the whole time. The laptop stands firm, farther away than your arm reaches, its cable out of the way.</source>
            <comment>ask.support.helper.how</comment>
            <translation>يقف من يساعدك قريبًا بحيث تستطيع يده أن تمسكك، طوال الوقت. والحاسوب المحمول ثابت، أبعد مما تصل إليه ذراعك، وسلكه بعيد عن الطريق.</translation>
        </message>
        <message>
            <source>Wear flat shoes with a closed heel, or go barefoot. Keep the floor clear.</source>
            <comment>ask.support.shoes</comment>
            <translation>البس حذاء مسطحًا مغلق الكعب، أو قف حافيًا. أبقِ الأرض خالية.</translation>
        </message>
        <message>
            <source>Your practice today</source>
            <comment>ask.today</comment>
            <translation>تمرينك اليوم</translation>
        </message>
        <message>
            <source>Begin</source>
            <comment>ask.today.begin</comment>
            <translation>بدء</translation>
        </message>
        <message>
            <source>Exercises and rests take about {minutes} minutes.</source>
            <comment>ask.today.how</comment>
            <translation>تستغرق التمارين وفترات الراحة نحو {minutes} من الدقائق.</translation>
        </message>
        <message>
            <source>Nothing in your plan can be done today.</source>
            <comment>ask.today.none</comment>
            <translation>لا يمكن اليوم فعل شيء من خطتك.</translation>
        </message>
        <message>
            <source>Not today:</source>
            <comment>ask.today.not</comment>
            <translation>ليس اليوم:</translation>
        </message>
        <message>
            <source>{number}.  {name}: {dose}</source>
            <comment>ask.today.row</comment>
            <translation>{number}.  {name}: {dose}</translation>
        </message>
        <message>
            <source>Exercises and rests take about a minute.</source>
            <comment>ask.today.short</comment>
            <translation>تستغرق التمارين وفترات الراحة نحو دقيقة.</translation>
        </message>
        <message>
            <source>Today: {name}</source>
            <comment>ask.today.stage</comment>
            <translation>اليوم: {name}</translation>
        </message>
        <message>
            <source>{name}: {why}</source>
            <comment>ask.today.waits</comment>
            <translation>{name}: {why}</translation>
        </message>
        <message>
            <source>From your therapist: {words}</source>
            <comment>ask.today.words</comment>
            <translation>من معالجك: {words}</translation>
        </message>
        <message>
            <source>I feel unwell (U)</source>
            <comment>ask.unwell</comment>
            <translation>أشعر بسوء (U)</translation>
        </message>
        <message>
            <source>I feel unwell, key U</source>
            <comment>ask.unwell_name</comment>
            <translation>أشعر بسوء، المفتاح U</translation>
        </message>
        <message>
            <source>Sit still for a moment</source>
            <comment>ask.wait</comment>
            <translation>اجلس ثابتًا لحظة</translation>
        </message>
        <message>
            <source>You saw two, so you stopped. Move your finger back out, and rest your arm.</source>
            <comment>ask.wait.double</comment>
            <translation>رأيت شيئين فتوقفت. أبعد إصبعك من جديد وأرح ذراعك.</translation>
        </message>
        <message>
            <source>Then you say how you feel.</source>
            <comment>ask.wait.how</comment>
            <translation>ثم تقول كيف تشعر.</translation>
        </message>
        <message>
            <source>How far is the wall?</source>
            <comment>ask.wall.distance</comment>
            <translation>كم يبعد الجدار؟</translation>
        </message>
        <message>
            <source>Sit as you will practise. With a tape measure how far it is from your eyes straight to the wall behind the screen. {least} to {most} cm will do.</source>
            <comment>ask.wall.distance.sitting</comment>
            <translation>اجلس كما ستتمرن. قِس بشريط المسافة من عينيك مباشرة إلى الجدار خلف الشاشة. يصلح من {least} إلى {most} سم.</translation>
        </message>
        <message>
            <source>Stand as you will practise, and have somebody measure with a tape how far it is from your eyes straight to the wall behind the screen. {least} to {most} cm will do.</source>
            <comment>ask.wall.distance.standing</comment>
            <translation>قف كما ستتمرن. اطلب من أحد أن يقيس بشريط المسافة من عينيك مباشرة إلى الجدار خلف الشاشة. يصلح من {least} إلى {most} سم.</translation>
        </message>
        <message>
            <source>Is the wall still {cm} cm from your eyes?</source>
            <comment>ask.wall.distance.still</comment>
            <translation>هل لا يزال الجدار على بعد {cm} سم من عينيك؟</translation>
        </message>
        <message>
            <source>Centimetres</source>
            <comment>ask.wall.length</comment>
            <translation>سنتيمترات</translation>
        </message>
        <message>
            <source>I can't put notes there</source>
            <comment>ask.wall.none</comment>
            <translation>لا أستطيع إلصاق أوراق هناك</translation>
        </message>
        <message>
            <source>How far apart are the two notes?</source>
            <comment>ask.wall.spacing</comment>
            <translation>كم المسافة بين الورقتين؟</translation>
        </message>
        <message>
            <source>Measure from the middle of one note to the middle of the other. {least} to {most} cm will do here; {usual} cm is a good distance.</source>
            <comment>ask.wall.spacing.how</comment>
            <translation>قِس من وسط ورقة إلى وسط الأخرى. يصلح هنا من {least} إلى {most} سم، و{usual} سم مسافة جيدة.</translation>
        </message>
        <message>
            <source>Are the two notes still {cm} cm apart?</source>
            <comment>ask.wall.spacing.still</comment>
            <translation>هل لا تزال الورقتان متباعدتين بمقدار {cm} سم؟</translation>
        </message>
        <message>
            <source>That is how it was last time. If your place, the screen or the notes have moved since, measure again.</source>
            <comment>ask.wall.still.how</comment>
            <translation>هكذا كان الأمر في المرة الماضية. إذا تغيّر مكانك أو الشاشة أو الأوراق منذ ذلك الحين، فقِس من جديد.</translation>
        </message>
        <message>
            <source>Measure again</source>
            <comment>ask.wall.still.no</comment>
            <translation>القياس من جديد</translation>
        </message>
        <message>
            <source>Yes, still {cm} cm</source>
            <comment>ask.wall.still.yes</comment>
            <translation>نعم، لا يزال {cm} سم</translation>
        </message>
        <message>
            <source>Did you fall in the last week?</source>
            <comment>ask.weekly.falls</comment>
            <translation>هل سقطت في الأسبوع الماضي؟</translation>
        </message>
        <message>
            <source>A slip or a trip counts too if you ended up on the ground. This comes once a week, for your therapist.</source>
            <comment>ask.weekly.falls.how</comment>
            <translation>الانزلاق أو التعثر يُحسب أيضًا إذا انتهى بك الأمر على الأرض. يأتي هذا السؤال مرة في الأسبوع، من أجل معالجك.</translation>
        </message>
        <message>
            <source>Yes, more than once</source>
            <comment>ask.weekly.falls.more</comment>
            <translation>نعم، أكثر من مرة</translation>
        </message>
        <message>
            <source>No, I did not fall</source>
            <comment>ask.weekly.falls.none</comment>
            <translation>لا، لم أسقط</translation>
        </message>
        <message>
            <source>Yes, once</source>
            <comment>ask.weekly.falls.once</comment>
            <translation>نعم، مرة واحدة</translation>
        </message>
        <message>
            <source>Were you hurt?</source>
            <comment>ask.weekly.hurt</comment>
            <translation>هل أُصبت؟</translation>
        </message>
        <message>
            <source>A bruise counts. If you need help, get it now.</source>
            <comment>ask.weekly.hurt.how</comment>
            <translation>الكدمة تُحسب أيضًا. إذا كنت بحاجة إلى مساعدة فاطلبها الآن.</translation>
        </message>
        <message>
            <source>Have your medicines changed?</source>
            <comment>ask.weekly.medicines_changed</comment>
            <translation>هل تغيّرت أدويتك؟</translation>
        </message>
        <message>
            <source>A new one, more or less of one, or one that you stopped, since this was asked last. Yes or no is enough: no names are kept.</source>
            <comment>ask.weekly.medicines_changed.how</comment>
            <translation>دواء جديد، أو كمية أكثر أو أقل من دواء، أو دواء توقفت عنه، منذ آخر مرة سُئلت فيها. تكفي نعم أو لا: لا تُحفظ أي أسماء.</translation>
        </message>
        <message>
            <source>I would rather not say</source>
            <comment>ask.weekly.skip</comment>
            <translation>أفضّل ألا أقول</translation>
        </message>
        <message>
            <source>{key}: I am all right</source>
            <comment>ask.well.fine</comment>
            <translation>{key}: أنا بخير</translation>
        </message>
        <message>
            <source>The camera saw a sudden drop of your head. Nobody has been called. Press 1 or 2.</source>
            <comment>ask.well.how</comment>
            <translation>رأت الكاميرا هبوطًا مفاجئًا لرأسك. لم يُتصل بأحد. اضغط 1 أو 2.</translation>
        </message>
        <message>
            <source>{key}: I am not well</source>
            <comment>ask.well.not_well</comment>
            <translation>{key}: لست بخير</translation>
        </message>
        <message>
            <source>Yes</source>
            <comment>ask.yes</comment>
            <translation>نعم</translation>
        </message>
        <message>
            <source>Later sessions are compared with this one. Is your therapist with you now?</source>
            <comment>baseline.ask</comment>
            <translation>تُقارن الجلسات اللاحقة بهذه الجلسة. هل معالجك معك الآن؟</translation>
        </message>
        <message>
            <source>Yes, we do it together</source>
            <comment>baseline.ask.yes</comment>
            <translation>نعم، نقوم به معًا</translation>
        </message>
        <message>
            <source>It is kept as your baseline.</source>
            <comment>baseline.kept</comment>
            <translation>حُفظت كقياسك المرجعي.</translation>
        </message>
        <message>
            <source>Baseline: do the next session together with your therapist. Later ones are compared with it.</source>
            <comment>baseline.next</comment>
            <translation>القياس المرجعي: قم بالجلسة القادمة مع معالجك. تُقارن به الجلسات اللاحقة.</translation>
        </message>
        <message>
            <source>No baseline today</source>
            <comment>baseline.not</comment>
            <translation>لا قياس مرجعي اليوم</translation>
        </message>
        <message>
            <source>Begin the baseline</source>
            <comment>baseline.start</comment>
            <translation>ابدأ القياس المرجعي</translation>
        </message>
        <message>
            <source>{low} to {high} degrees</source>
            <comment>call.amplitude</comment>
            <translation>من {low} إلى {high} درجة</translation>
        </message>
        <message>
            <source>Only your therapist decides this. Is your therapist in this call now, and do they ask for the change?</source>
            <comment>call.ask</comment>
            <translation>هذا قرار معالجك وحده. هل هو معك الآن في هذه المكالمة، وهل يطلب التغيير؟</translation>
        </message>
        <message>
            <source>No, leave it as it is</source>
            <comment>call.ask.no</comment>
            <translation>لا، اتركه كما هو</translation>
        </message>
        <message>
            <source>Yes, my therapist asks for it</source>
            <comment>call.ask.yes</comment>
            <translation>نعم، معالجي يطلب ذلك</translation>
        </message>
        <message>
            <source>Now {low} to {high} degrees.</source>
            <comment>call.changed.amplitude</comment>
            <translation>الآن من {low} إلى {high} درجة.</translation>
        </message>
        <message>
            <source>Now this comes next: {name}.</source>
            <comment>call.changed.next</comment>
            <translation>الآن يأتي بعد ذلك: {name}.</translation>
        </message>
        <message>
            <source>Now {tempo} beats a minute.</source>
            <comment>call.changed.tempo</comment>
            <translation>الآن {tempo} نقرة في الدقيقة.</translation>
        </message>
        <message>
            <source>Next: {name}. {what}</source>
            <comment>call.coming</comment>
            <translation>التالي: {name}. {what}</translation>
        </message>
        <message>
            <source>Faster (F6)</source>
            <comment>call.faster</comment>
            <translation>أسرع (F6)</translation>
        </message>
        <message>
            <source>Larger (F8)</source>
            <comment>call.larger</comment>
            <translation>أكبر (F8)</translation>
        </message>
        <message>
            <source>Mark this moment (F2)</source>
            <comment>call.mark</comment>
            <translation>ضع علامة على هذه اللحظة (F2)</translation>
        </message>
        <message>
            <source>Marked</source>
            <comment>call.marked</comment>
            <translation>وُضعت علامة</translation>
        </message>
        <message>
            <source>Another one first (F9)</source>
            <comment>call.other_next</comment>
            <translation>تمرين آخر أولًا (F9)</translation>
        </message>
        <message>
            <source>The plan allows no faster beat.</source>
            <comment>call.refused.fastest</comment>
            <translation>لا تسمح الخطة بأسرع من هذا.</translation>
        </message>
        <message>
            <source>The plan allows nothing larger.</source>
            <comment>call.refused.largest</comment>
            <translation>لا تسمح الخطة بأكبر من هذا.</translation>
        </message>
        <message>
            <source>The notes on the wall set how far this one goes. They stay where they are.</source>
            <comment>call.refused.marks_on_wall</comment>
            <translation>الورقتان على الحائط تحددان مدى هذا التمرين. تبقيان في مكانهما.</translation>
        </message>
        <message>
            <source>The neck limit of the plan allows nothing larger.</source>
            <comment>call.refused.neck_limit</comment>
            <translation>لا يسمح حد الرقبة في الخطة بأكبر من هذا.</translation>
        </message>
        <message>
            <source>This one has no degrees to change.</source>
            <comment>call.refused.no_amplitude</comment>
            <translation>ليس لهذا التمرين درجات لتغييرها.</translation>
        </message>
        <message>
            <source>This can be changed between two sets.</source>
            <comment>call.refused.not_now</comment>
            <translation>يمكن تغيير هذا بين مجموعتين.</translation>
        </message>
        <message>
            <source>Nothing to take back.</source>
            <comment>call.refused.nothing_to_undo</comment>
            <translation>لا شيء للتراجع عنه.</translation>
        </message>
        <message>
            <source>Nothing else can come first.</source>
            <comment>call.refused.only_one</comment>
            <translation>لا يوجد غيره ليأتي أولًا.</translation>
        </message>
        <message>
            <source>This one has no beat to change.</source>
            <comment>call.refused.own_pace</comment>
            <translation>ليس لهذا التمرين نقرات لتغييرها.</translation>
        </message>
        <message>
            <source>This screen has no room for a larger movement.</source>
            <comment>call.refused.screen</comment>
            <translation>لا تتسع هذه الشاشة لحركة أكبر.</translation>
        </message>
        <message>
            <source>The plan allows no slower beat.</source>
            <comment>call.refused.slowest</comment>
            <translation>لا تسمح الخطة بأبطأ من هذا.</translation>
        </message>
        <message>
            <source>The plan allows nothing smaller.</source>
            <comment>call.refused.smallest</comment>
            <translation>لا تسمح الخطة بأصغر من هذا.</translation>
        </message>
        <message>
            <source>Slower (F5)</source>
            <comment>call.slower</comment>
            <translation>أبطأ (F5)</translation>
        </message>
        <message>
            <source>Smaller (F7)</source>
            <comment>call.smaller</comment>
            <translation>أصغر (F7)</translation>
        </message>
        <message>
            <source>Take it back (F10)</source>
            <comment>call.take_back</comment>
            <translation>تراجع (F10)</translation>
        </message>
        <message>
            <source>Taken back.</source>
            <comment>call.taken_back</comment>
            <translation>تم التراجع.</translation>
        </message>
        <message>
            <source>For your therapist in the call</source>
            <comment>call.title</comment>
            <translation>لمعالجك في المكالمة</translation>
        </message>
        <message>
            <source>For your therapist: {figures}</source>
            <comment>came.figures</comment>
            <translation>لمعالجك: {figures}</translation>
        </message>
        <message>
            <source>gaze {degrees}° off</source>
            <comment>came.figures.gaze</comment>
            <translation>خطأ النظر {degrees}°</translation>
        </message>
        <message>
            <source>nod {up}° up, {down}° down</source>
            <comment>came.figures.nod</comment>
            <translation>إيماء {up}° إلى أعلى، {down}° إلى أسفل</translation>
        </message>
        <message>
            <source>turn {right}° right, {left}° left</source>
            <comment>came.figures.turn</comment>
            <translation>دوران {right}° يمينًا، {left}° يسارًا</translation>
        </message>
        <message>
            <source>at the wall {degrees}° off</source>
            <comment>came.figures.wall</comment>
            <translation>خطأ النظر إلى الجدار {degrees}°</translation>
        </message>
        <message>
            <source>Your eyes, checked on {points} points: {off}. {verdict}</source>
            <comment>came.gaze</comment>
            <translation>عيناك، بعد الفحص على عدد من النقاط ({points}): {off}. {verdict}</translation>
        </message>
        <message>
            <source>Your eyes were not seen on the points that check the set-up.</source>
            <comment>came.gaze.unseen</comment>
            <translation>لم تُرَ عيناك عند نقاط الفحص.</translation>
        </message>
        <message>
            <source>The camera read {measured}°, the tape says {expected}°: {off}.</source>
            <comment>came.mark</comment>
            <translation>قرأت الكاميرا {measured}°، ويقول الشريط {expected}°: {off}.</translation>
        </message>
        <message>
            <source>Do the check again</source>
            <comment>came.mark.again</comment>
            <translation>إعادة الفحص</translation>
        </message>
        <message>
            <source>Do the check</source>
            <comment>came.mark.do</comment>
            <translation>إجراء الفحص</translation>
        </message>
        <message>
            <source>Not done with this set-up.</source>
            <comment>came.mark.none</comment>
            <translation>لم يُجرَ مع هذا الإعداد.</translation>
        </message>
        <message>
            <source>about half a degree off</source>
            <comment>came.off.half</comment>
            <translation>خطأ نحو نصف درجة</translation>
        </message>
        <message>
            <source>about {degrees} degrees off</source>
            <comment>came.off.more</comment>
            <translation>خطأ بالدرجات: نحو {degrees}</translation>
        </message>
        <message>
            <source>about one degree off</source>
            <comment>came.off.one</comment>
            <translation>خطأ نحو درجة واحدة</translation>
        </message>
        <message>
            <source>See each step</source>
            <comment>came.open</comment>
            <translation>عرض كل خطوة</translation>
        </message>
        <message>
            <source>Checking your eyes</source>
            <comment>came.part.check</comment>
            <translation>فحص عينيك</translation>
        </message>
        <message>
            <source>That is far enough.</source>
            <comment>came.part.enough</comment>
            <translation>هذا كافٍ.</translation>
        </message>
        <message>
            <source>Your eyes were not seen.</source>
            <comment>came.part.eyes_unseen</comment>
            <translation>لم تُرَ عيناك.</translation>
        </message>
        <message>
            <source>Looking at points</source>
            <comment>came.part.looks</comment>
            <translation>النظر إلى النقاط</translation>
        </message>
        <message>
            <source>Mark on the wall</source>
            <comment>came.part.mark</comment>
            <translation>العلامة على الجدار</translation>
        </message>
        <message>
            <source>On {count} of {points} points your face was not seen.</source>
            <comment>came.part.missed</comment>
            <translation>نقاط لم يُرَ فيها وجهك: {count} من {points}.</translation>
        </message>
        <message>
            <source>Your head moved by about {degrees}°.</source>
            <comment>came.part.moved</comment>
            <translation>تحرك رأسك بنحو {degrees}°.</translation>
        </message>
        <message>
            <source>Your exercises need {asked}°.</source>
            <comment>came.part.need</comment>
            <translation>تمارينك تحتاج {asked}°.</translation>
        </message>
        <message>
            <source>Nodding</source>
            <comment>came.part.nod</comment>
            <translation>الإيماء</translation>
        </message>
        <message>
            <source>{plus}° up, {minus}° down.</source>
            <comment>came.part.nod.far</comment>
            <translation>{plus}° إلى أعلى، {minus}° إلى أسفل.</translation>
        </message>
        <message>
            <source>Your eyes on these points: {off}. {verdict}</source>
            <comment>came.part.read</comment>
            <translation>عيناك على هذه النقاط: {off}. {verdict}</translation>
        </message>
        <message>
            <source>Keeping still</source>
            <comment>came.part.rest</comment>
            <translation>الثبات</translation>
        </message>
        <message>
            <source>Your head stayed still.</source>
            <comment>came.part.still</comment>
            <translation>بقي رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Turning the head</source>
            <comment>came.part.turn</comment>
            <translation>دوران الرأس</translation>
        </message>
        <message>
            <source>{plus}° to the right, {minus}° left.</source>
            <comment>came.part.turn.far</comment>
            <translation>{plus}° إلى اليمين، {minus}° إلى اليسار.</translation>
        </message>
        <message>
            <source>Your face was seen in only {percent} % of it.</source>
            <comment>came.part.unseen</comment>
            <translation>لم يُرَ وجهك إلا في {percent} % من الخطوة.</translation>
        </message>
        <message>
            <source>Your head went far enough to every side.</source>
            <comment>came.reach</comment>
            <translation>وصل رأسك إلى حد كافٍ في كل الجهات.</translation>
        </message>
        <message>
            <source>Downwards your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.down</comment>
            <translation>إلى أسفل وصل رأسك إلى {went}°، والتمارين تحتاج {asked}°.</translation>
        </message>
        <message>
            <source>To the left your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.left</comment>
            <translation>إلى اليسار وصل رأسك إلى {went}°، والتمارين تحتاج {asked}°.</translation>
        </message>
        <message>
            <source>To the right your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.right</comment>
            <translation>إلى اليمين وصل رأسك إلى {went}°، والتمارين تحتاج {asked}°.</translation>
        </message>
        <message>
            <source>Upwards your head went {went}°, the exercises need {asked}°.</source>
            <comment>came.short.up</comment>
            <translation>إلى أعلى وصل رأسك إلى {went}°، والتمارين تحتاج {asked}°.</translation>
        </message>
        <message>
            <source>Farther out your eyes may not be judged. Turn farther only if that is comfortable.</source>
            <comment>came.short.why</comment>
            <translation>أبعد من ذلك قد لا يُحكَم على عينيك. زد الحركة فقط إن كانت مريحة لك.</translation>
        </message>
        <message>
            <source>How the set-up came out</source>
            <comment>came.title</comment>
            <translation>كيف جاء الإعداد</translation>
        </message>
        <message>
            <source>That will do: only larger looks away are noticed.</source>
            <comment>came.verdict.fair</comment>
            <translation>هذا كافٍ: لا يُلاحَظ إلا الابتعاد الأكبر بالنظر.</translation>
        </message>
        <message>
            <source>That is good.</source>
            <comment>came.verdict.good</comment>
            <translation>هذا جيد.</translation>
        </message>
        <message>
            <source>That is too far off: whether your eyes stay on the target is not judged.</source>
            <comment>came.verdict.poor</comment>
            <translation>هذا كثير: لا يُحكَم على بقاء عينيك على الهدف.</translation>
        </message>
        <message>
            <source>Your eyes, checked at the wall: {off}. {verdict}</source>
            <comment>came.wall</comment>
            <translation>عيناك، بعد الفحص على الجدار: {off}. {verdict}</translation>
        </message>
        <message>
            <source>At one of the two notes on the wall your eyes were not seen.</source>
            <comment>came.wall.one</comment>
            <translation>عند إحدى الورقتين على الجدار لم تُرَ عيناك.</translation>
        </message>
        <message>
            <source>Looking at the wall, your eyes were not seen.</source>
            <comment>came.wall.unseen</comment>
            <translation>لم تُرَ عيناك عند النظر إلى الجدار.</translation>
        </message>
        <message>
            <source>Camera</source>
            <comment>camera.choose</comment>
            <translation>الكاميرا</translation>
        </message>
        <message>
            <source>First camera found</source>
            <comment>camera.default</comment>
            <translation>أول كاميرا وُجدت</translation>
        </message>
        <message>
            <source>Use the last set-up</source>
            <comment>camera.kept</comment>
            <translation>استخدام آخر إعداد</translation>
        </message>
        <message>
            <source>Start the set-up</source>
            <comment>camera.next</comment>
            <translation>بدء الإعداد</translation>
        </message>
        <message>
            <source>You, as in a mirror</source>
            <comment>camera.picture</comment>
            <translation>أنت، كما في المرآة</translation>
        </message>
        <message>
            <source>Can the camera see you?</source>
            <comment>camera.title</comment>
            <translation>هل تراك الكاميرا؟</translation>
        </message>
        <message>
            <source>If it stays so, press “{button}”. You can note on the first page what you practise without the laptop.</source>
            <comment>camera.without</comment>
            <translation>إذا بقي الأمر كذلك، فاضغط «{button}». وما تتمرن عليه من دون الحاسوب يمكنك تدوينه في الصفحة الأولى.</translation>
        </message>
        <message>
            <source>Camera off</source>
            <comment>camera_off</comment>
            <translation>الكاميرا مطفأة</translation>
        </message>
        <message>
            <source>Cam. off</source>
            <comment>camera_off.short</comment>
            <translation>كاميرا مطفأة</translation>
        </message>
        <message>
            <source>Camera on</source>
            <comment>camera_on</comment>
            <translation>الكاميرا تعمل</translation>
        </message>
        <message>
            <source>Cam. on</source>
            <comment>camera_on.short</comment>
            <translation>كاميرا تعمل</translation>
        </message>
        <message>
            <source>If the room spins, hold on, sit still, and stop.</source>
            <comment>care.bend</comment>
            <translation>إذا دارت بك الغرفة، فأمسك بشيء، واجلس ثابتًا، وتوقف.</translation>
        </message>
        <message>
            <source>If the target blurs or jumps, go slower.</source>
            <comment>care.blur</comment>
            <translation>إذا صار الهدف غير واضح أو قفز، فأبطئ.</translation>
        </message>
        <message>
            <source>Put the chair against a wall. It must not have wheels.</source>
            <comment>care.chair</comment>
            <translation>ضع الكرسي إلى الجدار. يجب أن يكون بلا عجلات.</translation>
        </message>
        <message>
            <source>If you see two tips, stop there. Move your finger back out.</source>
            <comment>care.double</comment>
            <translation>إذا رأيت طرفين فتوقف هناك. أبعد إصبعك من جديد.</translation>
        </message>
        <message>
            <source>Have moving or flashing scenes ever made you ill, or brought on a fit (seizure) or a migraine? Then do not do this.</source>
            <comment>care.flashes</comment>
            <translation>هل سبق أن أمرضتك مشاهد متحركة أو وامضة، أو سببت لك نوبة تشنج أو شقيقة (صداعًا نصفيًا)؟ إذن لا تفعل هذا.</translation>
        </message>
        <message>
            <source>Stay where your neck feels fine. Stop if your neck hurts or your arm tingles.</source>
            <comment>care.neck</comment>
            <translation>ابقَ حيث ترتاح رقبتك. توقف إذا آلمتك رقبتك أو شعرت بوخز في ذراعك.</translation>
        </message>
        <message>
            <source>Hand the ball over. Do not throw it.</source>
            <comment>care.partner</comment>
            <translation>سلّم الكرة باليد. لا ترمها.</translation>
        </message>
        <message>
            <source>Some dizziness is expected. Stop if it gets strong or does not go away.</source>
            <comment>care.settle</comment>
            <translation>بعض الدوخة متوقع. توقف إذا اشتدت أو لم تذهب.</translation>
        </message>
        <message>
            <source>It must not hurt. Start small.</source>
            <comment>care.shoulder</comment>
            <translation>يجب ألا يؤلمك. ابدأ بحركة صغيرة.</translation>
        </message>
        <message>
            <source>Use a firm chair with no wheels. Keep both feet flat.</source>
            <comment>care.slide</comment>
            <translation>استخدم كرسيًا ثابتًا بلا عجلات. أبقِ قدميك على الأرض.</translation>
        </message>
        <message>
            <source>Your helper stays within reach of you. The mat must not slip.</source>
            <comment>care.soft</comment>
            <translation>يبقى من يساعدك في متناول يدك. يجب ألا تنزلق الحصيرة.</translation>
        </message>
        <message>
            <source>Keep one hand on the rail and your eyes open.</source>
            <comment>care.stairs</comment>
            <translation>أبقِ يدًا على الدرابزين، وعينيك مفتوحتين.</translation>
        </message>
        <message>
            <source>Have the corner behind you and a firm chair or a helper in front. Wear flat shoes or go barefoot.</source>
            <comment>care.stand</comment>
            <translation>ليكن الركن خلفك، وكرسي ثابت أو شخص يساعدك أمامك. البس حذاء مسطحًا أو قف حافيًا.</translation>
        </message>
        <message>
            <source>A little sway is fine. Hold on as soon as you need to.</source>
            <comment>care.steady</comment>
            <translation>التمايل القليل لا بأس به. أمسك بشيء حالما تحتاج إلى ذلك.</translation>
        </message>
        <message>
            <source>Use something soft. Leave it on the floor if it drops.</source>
            <comment>care.toss</comment>
            <translation>استخدم شيئًا لينًا. اتركه على الأرض إذا سقط.</translation>
        </message>
        <message>
            <source>Clear the floor. Turn on the light. Your helper is at your side, and behind you when you walk backward.</source>
            <comment>care.walk</comment>
            <translation>أخلِ الأرض. أضئ النور. ليبقَ من يساعدك إلى جانبك، وخلفك عندما تمشي إلى الخلف.</translation>
        </message>
        <message>
            <source>Sit on a firm chair. To stand, have a corner or a helper within reach.</source>
            <comment>caution.fall</comment>
            <translation>اجلس على كرسي ثابت. وللوقوف، ليكن بقربك ركن أو شخص يساعدك في متناول يدك.</translation>
        </message>
        <message>
            <source>Call for emergency help at once for a sudden bad headache, double vision, trouble speaking or swallowing, weakness or numbness, not being able to stand or walk, fainting, chest pain, or sudden loss of hearing.</source>
            <comment>caution.help</comment>
            <translation>اتصل بالطوارئ فورًا عند صداع شديد مفاجئ، أو رؤية مزدوجة، أو صعوبة في الكلام أو البلع، أو ضعف أو خدر، أو عجز عن الوقوف أو المشي، أو إغماء، أو ألم في الصدر، أو فقدان مفاجئ للسمع.</translation>
        </message>
        <message>
            <source>Some dizziness is expected. Stop and sit when you feel unwell, are in pain, or the dizziness does not settle.</source>
            <comment>caution.stop</comment>
            <translation>بعض الدوخة متوقع. توقف واجلس إذا شعرت بسوء، أو إذا تألمت، أو إذا لم تهدأ الدوخة.</translation>
        </message>
        <message>
            <source>Do only what your therapist has told you. Turnpost does not find out what you have and does not choose your treatment.</source>
            <comment>caution.therapist</comment>
            <translation>افعل فقط ما قاله لك معالجك. لا يكتشف Turnpost ما بك، ولا يختار علاجك.</translation>
        </message>
        <message>
            <source>Leave</source>
            <comment>choose.leave</comment>
            <translation>خروج</translation>
        </message>
        <message>
            <source>{what}: less</source>
            <comment>choose.less</comment>
            <translation>{what}: أقل</translation>
        </message>
        <message>
            <source>{what}: more</source>
            <comment>choose.more</comment>
            <translation>{what}: أكثر</translation>
        </message>
        <message>
            <source>?</source>
            <comment>choose.none_yet</comment>
            <translation>؟</translation>
        </message>
        <message>
            <source>The set-up worked. Choose what your therapist has asked for.</source>
            <comment>choose.ok</comment>
            <translation>نجح الإعداد. اختر ما طلبه منك معالجك.</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>choose.repetitions</comment>
            <translation>عدد المرات</translation>
        </message>
        <message>
            <source>Start exercise</source>
            <comment>choose.start</comment>
            <translation>بدء التمرين</translation>
        </message>
        <message>
            <source>Target size</source>
            <comment>choose.target</comment>
            <translation>حجم الهدف</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <comment>choose.target_value</comment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Beats a minute</source>
            <comment>choose.tempo</comment>
            <translation>النقرات في الدقيقة</translation>
        </message>
        <message>
            <source>Choose an exercise</source>
            <comment>choose.title</comment>
            <translation>اختر تمرينًا</translation>
        </message>
        <message>
            <source>Sample clip, no camera</source>
            <comment>clip_on</comment>
            <translation>مقطع مثال، بلا كاميرا</translation>
        </message>
        <message>
            <source>Sample</source>
            <comment>clip_on.short</comment>
            <translation>مثال</translation>
        </message>
        <message>
            <source>Saving ...</source>
            <comment>close.saving</comment>
            <translation>جارٍ الحفظ ...</translation>
        </message>
        <message>
            <source>,</source>
            <comment>comma</comment>
            <translation>،</translation>
        </message>
        <message>
            <source>Chin up a little</source>
            <comment>cue.chin_down</comment>
            <translation>ارفع ذقنك قليلًا</translation>
        </message>
        <message>
            <source>Keep your eyes open</source>
            <comment>cue.eyes_closed</comment>
            <translation>أبقِ عينيك مفتوحتين</translation>
        </message>
        <message>
            <source>Let your eyes go with your head</source>
            <comment>cue.eyes_not_with_head</comment>
            <translation>دع عينيك تتحركان مع رأسك</translation>
        </message>
        <message>
            <source>Keep your eyes closed</source>
            <comment>cue.eyes_opened</comment>
            <translation>أبقِ عينيك مغمضتين</translation>
        </message>
        <message>
            <source>Eyes on the target</source>
            <comment>cue.gaze_off_target</comment>
            <translation>عيناك على الهدف</translation>
        </message>
        <message>
            <source>Look all the way to the target</source>
            <comment>cue.gaze_short</comment>
            <translation>انظر حتى تصل إلى الهدف</translation>
        </message>
        <message>
            <source>Eyes first, then let your head come</source>
            <comment>cue.head_first</comment>
            <translation>عيناك أولًا، ثم رأسك</translation>
        </message>
        <message>
            <source>Keep your head still</source>
            <comment>cue.head_moved</comment>
            <translation>أبقِ رأسك ثابتًا</translation>
        </message>
        <message>
            <source>Ear to the shoulder, nose ahead</source>
            <comment>cue.head_turned</comment>
            <translation>الأذن نحو الكتف والأنف إلى الأمام</translation>
        </message>
        <message>
            <source>Turn the other way than the target</source>
            <comment>cue.head_with_target</comment>
            <translation>أدر رأسك عكس اتجاه الهدف</translation>
        </message>
        <message>
            <source>Come back into the picture</source>
            <comment>cue.left_picture</comment>
            <translation>عُد إلى الصورة</translation>
        </message>
        <message>
            <source>Nearly: let your eyes get there first</source>
            <comment>cue.moved_together</comment>
            <translation>كدت تصيب: دع عينيك تصلان أولًا</translation>
        </message>
        <message>
            <source>Not measured just now</source>
            <comment>cue.not_measured</comment>
            <translation>لا يُقاس الآن</translation>
        </message>
        <message>
            <source>All the way up</source>
            <comment>cue.not_upright</comment>
            <translation>استقم تمامًا</translation>
        </message>
        <message>
            <source>Are you all right?</source>
            <comment>cue.possible_fall</comment>
            <translation>هل أنت بخير؟</translation>
        </message>
        <message>
            <source>Let go when you feel steady</source>
            <comment>cue.steadied</comment>
            <translation>اترك يدك عندما تشعر بالثبات</translation>
        </message>
        <message>
            <source>A little higher, above your eyes</source>
            <comment>cue.throw_low</comment>
            <translation>أعلى قليلًا، فوق عينيك</translation>
        </message>
        <message>
            <source>A little slower</source>
            <comment>cue.too_fast</comment>
            <translation>أبطأ قليلًا</translation>
        </message>
        <message>
            <source>A little smaller</source>
            <comment>cue.too_large</comment>
            <translation>أقل اتساعًا قليلًا</translation>
        </message>
        <message>
            <source>A little faster</source>
            <comment>cue.too_slow</comment>
            <translation>أسرع قليلًا</translation>
        </message>
        <message>
            <source>A little bigger</source>
            <comment>cue.too_small</comment>
            <translation>أوسع قليلًا</translation>
        </message>
        <message>
            <source>You were asked to stop for today. Please rest, and practise again another day.</source>
            <comment>day_over</comment>
            <translation>طُلب منك التوقف لهذا اليوم. استرح من فضلك، وتمرن في يوم آخر.</translation>
        </message>
        <message>
            <source>Call your therapist before you practise again.</source>
            <comment>day_over.call</comment>
            <translation>اتصل بمعالجك قبل أن تتمرن من جديد.</translation>
        </message>
        <message>
            <source>If you have not called for emergency help yet, call now: {number}.</source>
            <comment>day_over.emergency</comment>
            <translation>إذا لم تتصل بالطوارئ بعد، فاتصل الآن: {number}.</translation>
        </message>
        <message>
            <source>If you have not called for emergency help yet, call now.</source>
            <comment>day_over.emergency_no_number</comment>
            <translation>إذا لم تتصل بالطوارئ بعد، فاتصل الآن.</translation>
        </message>
        <message>
            <source>My therapist told me today that I may go on</source>
            <comment>day_over.go_on</comment>
            <translation>قال لي معالجي اليوم إنه يمكنني المتابعة</translation>
        </message>
        <message>
            <source>Did your therapist say today that you may go on?</source>
            <comment>day_over.sure</comment>
            <translation>هل قال معالجك اليوم إنه يمكنك المتابعة؟</translation>
        </message>
        <message>
            <source>Your answer is kept for your therapist. Then the first questions come again.</source>
            <comment>day_over.sure.how</comment>
            <translation>تُحفظ إجابتك لمعالجك. ثم تأتي الأسئلة الأولى من جديد.</translation>
        </message>
        <message>
            <source>Yes, my therapist said so today</source>
            <comment>day_over.yes</comment>
            <translation>نعم، قال معالجي ذلك اليوم</translation>
        </message>
        <message>
            <source>The sample clip can't be paused.</source>
            <comment>demo.cannot_pause</comment>
            <translation>لا يمكن إيقاف مقطع المثال مؤقتًا.</translation>
        </message>
        <message>
            <source>{figure} ◄ affected side</source>
            <comment>desk.affected</comment>
            <translation>{figure} ◄ الجهة المصابة</translation>
        </message>
        <message>
            <source>{time} s</source>
            <comment>desk.at</comment>
            <translation>{time} ث</translation>
        </message>
        <message>
            <source>millimetres</source>
            <comment>desk.axis.mm</comment>
            <translation>ملليمتر</translation>
        </message>
        <message>
            <source>degrees, up is up</source>
            <comment>desk.axis.pitch</comment>
            <translation>درجات، الأعلى إلى أعلى</translation>
        </message>
        <message>
            <source>degrees, right ear down is up</source>
            <comment>desk.axis.roll</comment>
            <translation>درجات، الأذن اليمنى منخفضة إلى أعلى</translation>
        </message>
        <message>
            <source>degrees, near is up</source>
            <comment>desk.axis.vergence</comment>
            <translation>درجات، القريب إلى الأعلى</translation>
        </message>
        <message>
            <source>degrees, right is up</source>
            <comment>desk.axis.yaw</comment>
            <translation>درجات، اليمين إلى أعلى</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>desk.back</comment>
            <translation>رجوع (Esc)</translation>
        </message>
        <message>
            <source>◆ baseline, {text}</source>
            <comment>desk.baseline</comment>
            <translation>◆ قياس مرجعي، {text}</translation>
        </message>
        <message>
            <source>◆ {value}</source>
            <comment>desk.baseline.mean</comment>
            <translation>◆ {value}</translation>
        </message>
        <message>
            <source>{text}; baseline of {day}</source>
            <comment>desk.baseline.of</comment>
            <translation>{text}؛ القياس المرجعي في {day}</translation>
        </message>
        <message>
            <source>Compare with</source>
            <comment>desk.beside</comment>
            <translation>المقارنة مع</translation>
        </message>
        <message>
            <source>no other session</source>
            <comment>desk.beside.none</comment>
            <translation>لا جلسة أخرى</translation>
        </message>
        <message>
            <source>between exercises</source>
            <comment>desk.between</comment>
            <translation>بين التمارين</translation>
        </message>
        <message>
            <source>{count} answers tell no change below {least}</source>
            <comment>desk.change.answers</comment>
            <translation>{count} إجابات لا تُظهر تغيرًا أقل من {least}</translation>
        </message>
        <message>
            <source>▼ fell</source>
            <comment>desk.change.fell</comment>
            <translation>▼ انخفض</translation>
        </message>
        <message>
            <source>{text}; {count} left out</source>
            <comment>desk.change.left_out</comment>
            <translation>{text}؛ لم يُحسب {count}</translation>
        </message>
        <message>
            <source>no change (within ±{least})</source>
            <comment>desk.change.no_change</comment>
            <translation>لا تغير (ضمن ±{least})</translation>
        </message>
        <message>
            <source>{text}; another dose was asked</source>
            <comment>desk.change.other_dose</comment>
            <translation>{text}؛ كانت المطلوبة جرعة أخرى</translation>
        </message>
        <message>
            <source>▲ rose</source>
            <comment>desk.change.rose</comment>
            <translation>▲ ارتفع</translation>
        </message>
        <message>
            <source>{text}, against the baseline of {day}</source>
            <comment>desk.change.since</comment>
            <translation>{text}، مقارنة بالقياس المرجعي في {day}</translation>
        </message>
        <message>
            <source>too few to compare</source>
            <comment>desk.change.too_few</comment>
            <translation>أقل من أن تُقارن</translation>
        </message>
        <message>
            <source>too uneven to tell a change below {least}</source>
            <comment>desk.change.uneven</comment>
            <translation>متفاوت إلى حد لا يتبين معه تغير أقل من {least}</translation>
        </message>
        <message>
            <source>not comparable: other limits</source>
            <comment>desk.change.unlike</comment>
            <translation>غير قابل للمقارنة: حدود أخرى</translation>
        </message>
        <message>
            <source>{measured} of {all} sessions measured, {doubt} of them in doubt</source>
            <comment>desk.chart</comment>
            <translation>قيست {measured} من {all} جلسات، منها {doubt} مشكوك فيها</translation>
        </message>
        <message>
            <source>Change</source>
            <comment>desk.col.change</comment>
            <translation>التغير</translation>
        </message>
        <message>
            <source>Figure</source>
            <comment>desk.col.figure</comment>
            <translation>القيمة</translation>
        </message>
        <message>
            <source>At first</source>
            <comment>desk.col.first</comment>
            <translation>في البداية</translation>
        </message>
        <message>
            <source>Lately</source>
            <comment>desk.col.last</comment>
            <translation>مؤخرًا</translation>
        </message>
        <message>
            <source>All sessions</source>
            <comment>desk.col.trend</comment>
            <translation>كل الجلسات</translation>
        </message>
        <message>
            <source>Condition: {text}</source>
            <comment>desk.condition</comment>
            <translation>الظرف: {text}</translation>
        </message>
        <message>
            <source>Practice is counted up to {day}.</source>
            <comment>desk.counted_to</comment>
            <translation>حُسب التمرين حتى {day}.</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <comment>desk.day</comment>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>d MMM</source>
            <comment>desk.day.short</comment>
            <translation>d MMM</translation>
        </message>
        <message>
            <source>{before} → {after}</source>
            <comment>desk.dizzy</comment>
            <translation>{before} ← {after}</translation>
        </message>
        <message>
            <source>dark</source>
            <comment>desk.doubt.dark</comment>
            <translation>ظلام</translation>
        </message>
        <message>
            <source>? In doubt for {length} s: {why}</source>
            <comment>desk.doubt.of</comment>
            <translation>? مشكوك فيه لمدة {length} ث: {why}</translation>
        </message>
        <message>
            <source>the face was hard to follow</source>
            <comment>desk.doubt.unsure</comment>
            <translation>كان تتبع الوجه صعبًا</translation>
        </message>
        <message>
            <source>Typed and not added to the notes yet, gone if you close now: {text}</source>
            <comment>desk.draft</comment>
            <translation>مكتوب ولم يُضَف بعد إلى الملاحظات، ويضيع إن أغلقت الآن: {text}</translation>
        </message>
        <message>
            <source>Close without it</source>
            <comment>desk.draft.drop</comment>
            <translation>أغلق بدونها</translation>
        </message>
        <message>
            <source>Go to the note</source>
            <comment>desk.draft.show</comment>
            <translation>اذهب إلى الملاحظة</translation>
        </message>
        <message>
            <source>! {what}, {length} s</source>
            <comment>desk.event</comment>
            <translation>! {what}، {length} ث</translation>
        </message>
        <message>
            <source>{what} ×{count}</source>
            <comment>desk.event.times</comment>
            <translation>{what} ×{count}</translation>
        </message>
        <message>
            <source>{what} ({why})</source>
            <comment>desk.event.why</comment>
            <translation>{what} ({why})</translation>
        </message>
        <message>
            <source>Not read: {why}</source>
            <comment>desk.failed</comment>
            <translation>لم يُقرأ: {why}</translation>
        </message>
        <message>
            <source>{name}: {value}</source>
            <comment>desk.figure</comment>
            <translation>{name}: {value}</translation>
        </message>
        <message>
            <source>Figures</source>
            <comment>desk.figures</comment>
            <translation>القيم</translation>
        </message>
        <message>
            <source>All exercises</source>
            <comment>desk.filter.all</comment>
            <translation>كل التمارين</translation>
        </message>
        <message>
            <source>Changes only</source>
            <comment>desk.filter.changed</comment>
            <translation>التغيرات فقط</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>desk.filter.exercise</comment>
            <translation>التمرين</translation>
        </message>
        <message>
            <source>From</source>
            <comment>desk.filter.from</comment>
            <translation>من</translation>
        </message>
        <message>
            <source>Show all</source>
            <comment>desk.filter.reset</comment>
            <translation>عرض الكل</translation>
        </message>
        <message>
            <source>to</source>
            <comment>desk.filter.to</comment>
            <translation>إلى</translation>
        </message>
        <message>
            <source>Urgent</source>
            <comment>desk.first</comment>
            <translation>عاجل</translation>
        </message>
        <message>
            <source>In doubt: {why}</source>
            <comment>desk.flag</comment>
            <translation>مشكوك فيه: {why}</translation>
        </message>
        <message>
            <source>▨ Not measured for {length} s: {why}</source>
            <comment>desk.gap.of</comment>
            <translation>▨ لم يُقس لمدة {length} ث: {why}</translation>
        </message>
        <message>
            <source>Read on</source>
            <comment>desk.go_on</comment>
            <translation>متابعة القراءة</translation>
        </message>
        <message>
            <source>{value}?</source>
            <comment>desk.in_doubt</comment>
            <translation>{value}؟</translation>
        </message>
        <message>
            <source>● session   ◆ baseline   ○ ? in doubt, not compared   ┆ not measured   grey: asked for   At first, Lately: means of up to 5</source>
            <comment>desk.key</comment>
            <translation>● جلسة   ◆ القياس المرجعي   ○ ؟ مشكوك فيه، لم يُقارن   ┆ لم يُقس   الرمادي: المطلوب   في البداية، مؤخرًا: متوسط حتى 5</translation>
        </message>
        <message>
            <source>in doubt</source>
            <comment>desk.key.doubt</comment>
            <translation>مشكوك فيه</translation>
        </message>
        <message>
            <source>noticed</source>
            <comment>desk.key.event</comment>
            <translation>لوحظ</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>desk.key.gap</comment>
            <translation>لم يُقس</translation>
        </message>
        <message>
            <source>marked</source>
            <comment>desk.key.mark</comment>
            <translation>معلَّم</translation>
        </message>
        <message>
            <source>marked not valid</source>
            <comment>desk.key.not_valid</comment>
            <translation>مُعلَّمة غير صالحة</translation>
        </message>
        <message>
            <source>pause</source>
            <comment>desk.key.pause</comment>
            <translation>توقف</translation>
        </message>
        <message>
            <source>every other repetition</source>
            <comment>desk.key.repetition</comment>
            <translation>كل مرة ثانية</translation>
        </message>
        <message>
            <source>Last session: {day}</source>
            <comment>desk.last</comment>
            <translation>آخر جلسة: {day}</translation>
        </message>
        <message>
            <source>eyes in the head</source>
            <comment>desk.line.eye</comment>
            <translation>العينان في الرأس</translation>
        </message>
        <message>
            <source>neck forward</source>
            <comment>desk.line.fore_aft</comment>
            <translation>العنق أمامًا</translation>
        </message>
        <message>
            <source>gaze</source>
            <comment>desk.line.gaze</comment>
            <translation>النظر</translation>
        </message>
        <message>
            <source>head</source>
            <comment>desk.line.head</comment>
            <translation>الرأس</translation>
        </message>
        <message>
            <source>neck height</source>
            <comment>desk.line.height</comment>
            <translation>ارتفاع العنق</translation>
        </message>
        <message>
            <source>{line} not measured</source>
            <comment>desk.line.none</comment>
            <translation>{line} لم يُقس</translation>
        </message>
        <message>
            <source>neck sideways</source>
            <comment>desk.line.sideways</comment>
            <translation>العنق جانبًا</translation>
        </message>
        <message>
            <source>target</source>
            <comment>desk.line.target</comment>
            <translation>الهدف</translation>
        </message>
        <message>
            <source>{line} {value}</source>
            <comment>desk.line.value</comment>
            <translation>{line} {value}</translation>
        </message>
        <message>
            <source>angle between the eyes</source>
            <comment>desk.line.vergence</comment>
            <translation>الزاوية بين العينين</translation>
        </message>
        <message>
            <source>Reading the session ...</source>
            <comment>desk.loading</comment>
            <translation>جارٍ قراءة الجلسة ...</translation>
        </message>
        <message>
            <source>Looking through the folder ...</source>
            <comment>desk.looking</comment>
            <translation>جارٍ النظر في المجلد ...</translation>
        </message>
        <message>
            <source>⚑ marked at {time} s</source>
            <comment>desk.mark.at</comment>
            <translation>⚑ عُلّم عند {time} ث</translation>
        </message>
        <message>
            <source>⚑ Marked while it went on</source>
            <comment>desk.marked</comment>
            <translation>⚑ عُلّم أثناء الأداء</translation>
        </message>
        <message>
            <source>⚑ Marked outside the exercise</source>
            <comment>desk.marked.outside</comment>
            <translation>⚑ عُلّم خارج التمرين</translation>
        </message>
        <message>
            <source>and {count} more</source>
            <comment>desk.more</comment>
            <translation>و{count} غيرها</translation>
        </message>
        <message>
            <source>Sessions without a pseudonym</source>
            <comment>desk.nameless</comment>
            <translation>جلسات بلا اسم مستعار</translation>
        </message>
        <message>
            <source>Each stands by itself</source>
            <comment>desk.nameless.each</comment>
            <translation>كل جلسة قائمة بذاتها</translation>
        </message>
        <message>
            <source>Whose sessions these are is not known: they may be of several people. So each stands by itself, without practice, trends and conditions. Give each person a plan of their own, with a pseudonym; what is practised with it from then on has a name.</source>
            <comment>desk.nameless.what</comment>
            <translation>لا يُعرف لمن هذه الجلسات: فقد تكون لعدة أشخاص. لذلك تبقى كل جلسة قائمة بذاتها، بلا حساب للتدريب ولا اتجاهات ولا شروط. أعطِ كل شخص خطة خاصة به تحمل اسمًا مستعارًا؛ وما يُتدرَّب عليه بها بعد ذلك يكون له اسم.</translation>
        </message>
        <message>
            <source>No plan at hand</source>
            <comment>desk.no_plan</comment>
            <translation>لا توجد خطة متاحة</translation>
        </message>
        <message>
            <source>this folder has only the summary</source>
            <comment>desk.no_samples</comment>
            <translation>في هذا المجلد الملخص فقط</translation>
        </message>
        <message>
            <source>Nothing was practised in this session. What was answered is under Figures.</source>
            <comment>desk.no_sets</comment>
            <translation>لم يُمارَس شيء في هذه الجلسة. الإجابات موجودة تحت «القيم».</translation>
        </message>
        <message>
            <source>The measured samples of this session are not in the folder: {why}</source>
            <comment>desk.no_trace</comment>
            <translation>البيانات المقيسة لهذه الجلسة ليست في المجلد: {why}</translation>
        </message>
        <message>
            <source>There are no sessions in this folder yet.</source>
            <comment>desk.nobody</comment>
            <translation>لا توجد جلسات في هذا المجلد بعد.</translation>
        </message>
        <message>
            <source>not asked</source>
            <comment>desk.not_asked</comment>
            <translation>لم يُسأل</translation>
        </message>
        <message>
            <source>{author}, {day}: {text}</source>
            <comment>desk.note</comment>
            <translation>{author}، {day}: {text}</translation>
        </message>
        <message>
            <source>Add note</source>
            <comment>desk.note.add</comment>
            <translation>إضافة ملاحظة</translation>
        </message>
        <message>
            <source>Not saved: {why}</source>
            <comment>desk.note.failed</comment>
            <translation>لم يُحفظ: {why}</translation>
        </message>
        <message>
            <source>repetition {number} is not valid</source>
            <comment>desk.note.invalid</comment>
            <translation>المرة {number} غير صالحة</translation>
        </message>
        <message>
            <source>Notes stand beside the measured figures, which never change.</source>
            <comment>desk.note.kept</comment>
            <translation>تبقى الملاحظات بجانب القيم المقيسة التي لا تتغير أبدًا.</translation>
        </message>
        <message>
            <source>Mark repetition not valid</source>
            <comment>desk.note.mark</comment>
            <translation>تعليم المرة غير صالحة</translation>
        </message>
        <message>
            <source>There is nothing of yours to take back here: a note is taken back only by who wrote it, on the computer on which it was written.</source>
            <comment>desk.note.no_undo</comment>
            <translation>لا يوجد هنا شيء لك يمكن سحبه: لا يسحب الملاحظة إلا من كتبها، وعلى الحاسوب الذي كُتبت عليه.</translation>
        </message>
        <message>
            <source>No notes yet.</source>
            <comment>desk.note.none</comment>
            <translation>لا ملاحظات بعد.</translation>
        </message>
        <message>
            <source>This older note may be of another computer with the same login: {note}</source>
            <comment>desk.note.older</comment>
            <translation>قد تكون هذه الملاحظة الأقدم من حاسوب آخر بتسجيل الدخول نفسه: {note}</translation>
        </message>
        <message>
            <source>Take this old note back</source>
            <comment>desk.note.sure</comment>
            <translation>اسحب هذه الملاحظة القديمة</translation>
        </message>
        <message>
            <source>A note on this session</source>
            <comment>desk.note.text</comment>
            <translation>ملاحظة على هذه الجلسة</translation>
        </message>
        <message>
            <source>Undo my last note</source>
            <comment>desk.note.undo</comment>
            <translation>التراجع عن ملاحظتي الأخيرة</translation>
        </message>
        <message>
            <source>Notes</source>
            <comment>desk.notes</comment>
            <translation>ملاحظات</translation>
        </message>
        <message>
            <source>{count}</source>
            <comment>desk.notes_count</comment>
            <translation>{count}</translation>
        </message>
        <message>
            <source>nothing practised</source>
            <comment>desk.nothing_done</comment>
            <translation>لم يُتمرن على شيء</translation>
        </message>
        <message>
            <source>Nothing that needs a look first</source>
            <comment>desk.nothing_first</comment>
            <translation>لا شيء يحتاج إلى نظرة أولًا</translation>
        </message>
        <message>
            <source>Another folder</source>
            <comment>desk.open</comment>
            <translation>مجلد آخر</translation>
        </message>
        <message>
            <source>paused</source>
            <comment>desk.pause</comment>
            <translation>توقف</translation>
        </message>
        <message>
            <source>Ⅱ Paused for {length} s</source>
            <comment>desk.pause.of</comment>
            <translation>Ⅱ توقف لمدة {length} ث</translation>
        </message>
        <message>
            <source>People, most urgent first</source>
            <comment>desk.people</comment>
            <translation>الأشخاص، والأكثر إلحاحًا أولًا</translation>
        </message>
        <message>
            <source>Plan (Ctrl+E)</source>
            <comment>desk.plan</comment>
            <translation>الخطة (Ctrl+E)</translation>
        </message>
        <message>
            <source>Practice</source>
            <comment>desk.practice</comment>
            <translation>التمرن</translation>
        </message>
        <message>
            <source>Today's baseline is here. Set ranges and tempo by it?</source>
            <comment>desk.ranges</comment>
            <translation>وصل القياس المرجعي لهذا اليوم. هل تُضبط المديات والإيقاع بحسبه؟</translation>
        </message>
        <message>
            <source>Ranges and tempo</source>
            <comment>desk.ranges.set</comment>
            <translation>المديات والإيقاع</translation>
        </message>
        <message>
            <source>People: {people}, sessions: {sessions}</source>
            <comment>desk.read</comment>
            <translation>الأشخاص: {people}، الجلسات: {sessions}</translation>
        </message>
        <message>
            <source>Reading {done} of {of} files ...</source>
            <comment>desk.reading</comment>
            <translation>جارٍ قراءة الملفات: {done} من {of} ...</translation>
        </message>
        <message>
            <source>repetition {number}</source>
            <comment>desk.rep</comment>
            <translation>المرة {number}</translation>
        </message>
        <message>
            <source>{what} (marked not valid)</source>
            <comment>desk.rep.invalid</comment>
            <translation>{what} (مُعلَّمة غير صالحة)</translation>
        </message>
        <message>
            <source>{side} {value}</source>
            <comment>desk.rep.turn</comment>
            <translation>{side} {value}</translation>
        </message>
        <message>
            <source>Dizziness</source>
            <comment>desk.scol.dizzy</comment>
            <translation>الدوخة</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>desk.scol.done</comment>
            <translation>التمارين</translation>
        </message>
        <message>
            <source>In doubt</source>
            <comment>desk.scol.doubt</comment>
            <translation>مشكوك فيه</translation>
        </message>
        <message>
            <source>How it ended</source>
            <comment>desk.scol.ended</comment>
            <translation>كيف انتهت</translation>
        </message>
        <message>
            <source>Notes</source>
            <comment>desk.scol.notes</comment>
            <translation>ملاحظات</translation>
        </message>
        <message>
            <source>When</source>
            <comment>desk.scol.when</comment>
            <translation>متى</translation>
        </message>
        <message>
            <source>{person}, {day}</source>
            <comment>desk.session</comment>
            <translation>{person}، {day}</translation>
        </message>
        <message>
            <source>Sessions</source>
            <comment>desk.sessions</comment>
            <translation>الجلسات</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>desk.set</comment>
            <translation>التمرين</translation>
        </message>
        <message>
            <source>{name} ({number} of {of})</source>
            <comment>desk.set.part</comment>
            <translation>{name} ({number} من {of})</translation>
        </message>
        <message>
            <source>In {days} days: {share} % of bouts asked</source>
            <comment>desk.share</comment>
            <translation>في {days} يومًا: {share} % من التمرينات المطلوبة</translation>
        </message>
        <message>
            <source>In one day: {share} % of bouts asked</source>
            <comment>desk.share.one</comment>
            <translation>في يوم واحد: {share} % من التمرينات المطلوبة</translation>
        </message>
        <message>
            <source>Open session</source>
            <comment>desk.show</comment>
            <translation>فتح الجلسة</translation>
        </message>
        <message>
            <source>Open the session of {day}</source>
            <comment>desk.show_name</comment>
            <translation>فتح جلسة {day}</translation>
        </message>
        <message>
            <source>affected side: both</source>
            <comment>desk.side.both</comment>
            <translation>الجهة المصابة: كلتاهما</translation>
        </message>
        <message>
            <source>affected side: left</source>
            <comment>desk.side.left</comment>
            <translation>الجهة المصابة: اليسرى</translation>
        </message>
        <message>
            <source>affected side: right</source>
            <comment>desk.side.right</comment>
            <translation>الجهة المصابة: اليمنى</translation>
        </message>
        <message>
            <source>affected side not known</source>
            <comment>desk.side.unknown</comment>
            <translation>الجهة المصابة غير معروفة</translation>
        </message>
        <message>
            <source>Next: {text}</source>
            <comment>desk.step</comment>
            <translation>التالي: {text}</translation>
        </message>
        <message>
            <source>Stop reading</source>
            <comment>desk.stop</comment>
            <translation>إيقاف القراءة</translation>
        </message>
        <message>
            <source>Stopped: only a part of the folder was read ({count} sessions).</source>
            <comment>desk.stopped</comment>
            <translation>توقفت: لم يُقرأ إلا جزء من المجلد (عدد الجلسات: {count}).</translation>
        </message>
        <message>
            <source>Bouts a day. {text}</source>
            <comment>desk.strip</comment>
            <translation>التمرينات كل يوم. {text}</translation>
        </message>
        <message>
            <source>a box a bout: full = measured, half = not seen by the camera, empty = asked, not done</source>
            <comment>desk.strip.key</comment>
            <translation>مربع لكل تمرين: ممتلئ = قيس، نصف = لم تره الكاميرا، فارغ = مطلوب ولم يُفعل</translation>
        </message>
        <message>
            <source>See</source>
            <comment>desk.then</comment>
            <translation>انظر</translation>
        </message>
        <message>
            <source>Review</source>
            <comment>desk.title</comment>
            <translation>مراجعة</translation>
        </message>
        <message>
            <source>Baseline together</source>
            <comment>desk.together</comment>
            <translation>قياس مرجعي</translation>
        </message>
        <message>
            <source>The program opens beside this window. Once it is over, the session stands here by itself.</source>
            <comment>desk.together.begun</comment>
            <translation>يُفتح البرنامج بجانب هذه النافذة. عند انتهاء الجلسة تظهر هنا من تلقاء نفسها.</translation>
        </message>
        <message>
            <source>Something goes on in the program's window. End it there, then begin here again.</source>
            <comment>desk.together.busy</comment>
            <translation>هناك شيء جارٍ في نافذة البرنامج. أنهِه هناك ثم ابدأ من هنا مرة أخرى.</translation>
        </message>
        <message>
            <source>The program's window shows the sample clip until it is closed. Close it, and this window with it; then start the program again and begin here once more.</source>
            <comment>desk.together.clip</comment>
            <translation>تعرض نافذة البرنامج مقطع المثال إلى أن تُغلق. أغلقها، فتُغلق معها هذه النافذة؛ ثم شغّل البرنامج من جديد وابدأ من هنا مرة أخرى.</translation>
        </message>
        <message>
            <source>The program could not be opened.</source>
            <comment>desk.together.failed</comment>
            <translation>تعذّر فتح البرنامج.</translation>
        </message>
        <message>
            <source>The program's window is ready for it. Once it is over, the session stands here by itself.</source>
            <comment>desk.together.here</comment>
            <translation>نافذة البرنامج جاهزة لذلك. عند انتهاء الجلسة تظهر هنا من تلقاء نفسها.</translation>
        </message>
        <message>
            <source>This folder has no plan with this pseudonym. Make one first.</source>
            <comment>desk.together.no_plan</comment>
            <translation>لا توجد في هذا المجلد خطة بهذا الاسم المستعار. أنشئ خطة أولًا.</translation>
        </message>
        <message>
            <source>The program is open already. Close its window first, then begin here again.</source>
            <comment>desk.together.open</comment>
            <translation>البرنامج مفتوح بالفعل. أغلق نافذته أولًا ثم ابدأ من هنا مرة أخرى.</translation>
        </message>
        <message>
            <source>The program could not take the plan; its window says why.</source>
            <comment>desk.together.refused</comment>
            <translation>تعذّر على البرنامج قبول الخطة؛ تذكر نافذته السبب.</translation>
        </message>
        <message>
            <source>The program's window shows the sample clip. Go back to the first page there, then begin here again.</source>
            <comment>desk.together.sample</comment>
            <translation>تعرض نافذة البرنامج مقطع المثال. ارجع هناك إلى الصفحة الأولى، ثم ابدأ من هنا مرة أخرى.</translation>
        </message>
        <message>
            <source>Head, gaze and target over time</source>
            <comment>desk.trace</comment>
            <translation>الرأس والنظر والهدف عبر الزمن</translation>
        </message>
        <message>
            <source>← → cursor, with Shift a second; + − zoom; Page keys move; Home shows the whole exercise</source>
            <comment>desk.trace.how</comment>
            <translation>← → المؤشر، ومع Shift ثانية؛ + − التكبير؛ مفاتيح الصفحة تحرك؛ Home يعرض التمرين كله</translation>
        </message>
        <message>
            <source>Trends</source>
            <comment>desk.trends</comment>
            <translation>التطور</translation>
        </message>
        <message>
            <source>{what} (with {count} marked not valid)</source>
            <comment>desk.trends.marked</comment>
            <translation>{what} (منها {count} عُلِّمت غير صالحة)</translation>
        </message>
        <message>
            <source>Files left out: {count}</source>
            <comment>desk.unread</comment>
            <translation>ملفات متروكة: {count}</translation>
        </message>
        <message>
            <source>Files left out, and why</source>
            <comment>desk.unread.name</comment>
            <translation>ملفات متروكة، والسبب</translation>
        </message>
        <message>
            <source>{path}: {why}</source>
            <comment>desk.unread.row</comment>
            <translation>{path}: {why}</translation>
        </message>
        <message>
            <source>Files left out: {count} (could not be read: {not_read})</source>
            <comment>desk.unread.some</comment>
            <translation>ملفات متروكة: {count} (تعذّرت قراءة: {not_read})</translation>
        </message>
        <message>
            <source>Over time</source>
            <comment>desk.what</comment>
            <translation>المجرى</translation>
        </message>
        <message>
            <source>Whole session</source>
            <comment>desk.whole</comment>
            <translation>الجلسة كلها</translation>
        </message>
        <message>
            <source>Zoom in</source>
            <comment>desk.zoom_in</comment>
            <translation>تكبير</translation>
        </message>
        <message>
            <source>Zoom out</source>
            <comment>desk.zoom_out</comment>
            <translation>تصغير</translation>
        </message>
        <message>
            <source>Beware: {what}.</source>
            <comment>edit.about.cautions</comment>
            <translation>انتبه: {what}.</translation>
        </message>
        <message>
            <source>{what}.</source>
            <comment>edit.about.counted</comment>
            <translation>{what}.</translation>
        </message>
        <message>
            <source>Its time counts as gaze stabilisation.</source>
            <comment>edit.about.minutes</comment>
            <translation>يُحسب وقته تثبيتًا للنظر.</translation>
        </message>
        <message>
            <source>Not measured: {what}.</source>
            <comment>edit.about.not_measured</comment>
            <translation>لا يُقاس: {what}.</translation>
        </message>
        <message>
            <source>The patient reads: “{name}”</source>
            <comment>edit.about.patient</comment>
            <translation>يقرأ المريض: «{name}»</translation>
        </message>
        <message>
            <source>Add (Ctrl+E)</source>
            <comment>edit.add</comment>
            <translation>إضافة (Ctrl+E)</translation>
        </message>
        <message>
            <source>Add an exercise from the catalogue</source>
            <comment>edit.add.name</comment>
            <translation>إضافة تمرين من الفهرس</translation>
        </message>
        <message>
            <source>Add stage</source>
            <comment>edit.add_stage</comment>
            <translation>إضافة مرحلة</translation>
        </message>
        <message>
            <source>Add a stage at the end</source>
            <comment>edit.add_stage.name</comment>
            <translation>إضافة مرحلة في النهاية</translation>
        </message>
        <message>
            <source>Add it (Enter)</source>
            <comment>edit.add_this</comment>
            <translation>إضافته (Enter)</translation>
        </message>
        <message>
            <source>Figures come from</source>
            <comment>edit.after</comment>
            <translation>تأتي القيم من</translation>
        </message>
        <message>
            <source>What stands further up in the plan.</source>
            <comment>edit.after.how</comment>
            <translation>ما هو أعلى في الخطة.</translation>
        </message>
        <message>
            <source>Age group</source>
            <comment>edit.age</comment>
            <translation>الفئة العمرية</translation>
        </message>
        <message>
            <source>as usual: {usual}</source>
            <comment>edit.as_usual</comment>
            <translation>كالمعتاد: {usual}</translation>
        </message>
        <message>
            <source>Ask about nausea too</source>
            <comment>edit.ask.nausea</comment>
            <translation>السؤال عن الغثيان أيضًا</translation>
        </message>
        <message>
            <source>Ask about unsteadiness too</source>
            <comment>edit.ask.unsteadiness</comment>
            <translation>السؤال عن عدم الثبات أيضًا</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>edit.back</comment>
            <translation>رجوع (Esc)</translation>
        </message>
        <message>
            <source>Baseline of {day}</source>
            <comment>edit.baseline</comment>
            <translation>القياس المرجعي في {day}</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>edit.baseline.bpm</comment>
            <translation>{tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>{new} instead of {old}</source>
            <comment>edit.baseline.instead</comment>
            <translation>{new} بدلًا من {old}</translation>
        </message>
        <message>
            <source>{entry}: {what}</source>
            <comment>edit.baseline.line</comment>
            <translation>{entry}: {what}</translation>
        </message>
        <message>
            <source>{told}. Not offered: {why}</source>
            <comment>edit.baseline.not_offered</comment>
            <translation>{told}. لا يُعرض: {why}</translation>
        </message>
        <message>
            <source>nothing measured</source>
            <comment>edit.baseline.nothing</comment>
            <translation>لم يُقس شيء</translation>
        </message>
        <message>
            <source>{low} to {high}°</source>
            <comment>edit.baseline.range</comment>
            <translation>من {low} إلى {high}°</translation>
        </message>
        <message>
            <source>symptoms +{points}</source>
            <comment>edit.baseline.rise</comment>
            <translation>الأعراض +{points}</translation>
        </message>
        <message>
            <source>{deg}° to both sides</source>
            <comment>edit.baseline.swing</comment>
            <translation>{deg}° إلى الجهتين</translation>
        </message>
        <message>
            <source>Take over: {what}</source>
            <comment>edit.baseline.take</comment>
            <translation>خذ: {what}</translation>
        </message>
        <message>
            <source>Take over for all exercises</source>
            <comment>edit.baseline.take_all</comment>
            <translation>خذها لكل التمارين</translation>
        </message>
        <message>
            <source>{told}. To take over: {what}</source>
            <comment>edit.baseline.takes</comment>
            <translation>{told}. ما يمكن أخذه: {what}</translation>
        </message>
        <message>
            <source>nobody said whether the target was clear</source>
            <comment>edit.baseline.why.clarity_not_asked</comment>
            <translation>لم يقل أحد هل كان الهدف واضحًا</translation>
        </message>
        <message>
            <source>the figures are in doubt</source>
            <comment>edit.baseline.why.doubt</comment>
            <translation>القيم مشكوك فيها</translation>
        </message>
        <message>
            <source>a session of that day was broken off</source>
            <comment>edit.baseline.why.ended</comment>
            <translation>قُطعت إحدى جلسات ذلك اليوم</translation>
        </message>
        <message>
            <source>a possible fall was seen</source>
            <comment>edit.baseline.why.fall</comment>
            <translation>شوهد سقوط محتمل</translation>
        </message>
        <message>
            <source>too few turns</source>
            <comment>edit.baseline.why.few_turns</comment>
            <translation>عدد الاستدارات قليل جدًا</translation>
        </message>
        <message>
            <source>no score was given after it</source>
            <comment>edit.baseline.why.no_scores</comment>
            <translation>لم تُعطَ درجة بعده</translation>
        </message>
        <message>
            <source>the target was not clear</source>
            <comment>edit.baseline.why.not_clear</comment>
            <translation>لم يكن الهدف واضحًا</translation>
        </message>
        <message>
            <source>not done that day</source>
            <comment>edit.baseline.why.not_done</comment>
            <translation>لم يُؤدَّ في ذلك اليوم</translation>
        </message>
        <message>
            <source>it was not measured</source>
            <comment>edit.baseline.why.not_measured</comment>
            <translation>لم يُقس</translation>
        </message>
        <message>
            <source>symptoms did not settle</source>
            <comment>edit.baseline.why.not_settled</comment>
            <translation>لم تهدأ الأعراض</translation>
        </message>
        <message>
            <source>done as another exercise</source>
            <comment>edit.baseline.why.other</comment>
            <translation>أُدِّي كتمرين آخر</translation>
        </message>
        <message>
            <source>symptoms rose by more than 2</source>
            <comment>edit.baseline.why.rose</comment>
            <translation>زادت الأعراض بأكثر من 2</translation>
        </message>
        <message>
            <source>the turns were too small</source>
            <comment>edit.baseline.why.too_small</comment>
            <translation>كانت الاستدارات صغيرة جدًا</translation>
        </message>
        <message>
            <source>Bouts a day</source>
            <comment>edit.bouts</comment>
            <translation>التمرينات في اليوم</translation>
        </message>
        <message>
            <source>Usual: 3, at least three a day ({source})</source>
            <comment>edit.bouts.how</comment>
            <translation>المعتاد: 3، ثلاث على الأقل في اليوم ({source})</translation>
        </message>
        <message>
            <source>{tempo} a minute</source>
            <comment>edit.bpm</comment>
            <translation>{tempo} في الدقيقة</translation>
        </message>
        <message>
            <source>Cancel</source>
            <comment>edit.cancel</comment>
            <translation>إلغاء</translation>
        </message>
        <message>
            <source>Catalogue</source>
            <comment>edit.catalogue</comment>
            <translation>الفهرس</translation>
        </message>
        <message>
            <source>The target was said to be clear</source>
            <comment>edit.clear</comment>
            <translation>قيل إن الهدف كان واضحًا</translation>
        </message>
        <message>
            <source>Before anything but seated work</source>
            <comment>edit.clearance</comment>
            <translation>قبل أي شيء غير الجلوس</translation>
        </message>
        <message>
            <source>Until all of this is ticked, only what the seated starter has is offered.</source>
            <comment>edit.clearance.how</comment>
            <translation>حتى توضع علامة على كل هذا، لا يُعرض إلا ما في البداية مع الجلوس.</translation>
        </message>
        <message>
            <source>I am satisfied of this</source>
            <comment>edit.cleared</comment>
            <translation>تأكدت من هذا</translation>
        </message>
        <message>
            <source>Item {number}: I am satisfied of this</source>
            <comment>edit.cleared.name</comment>
            <translation>البند {number}: تأكدت من هذا</translation>
        </message>
        <message>
            <source>Condition, in words</source>
            <comment>edit.condition</comment>
            <translation>الشرط بالكلمات</translation>
        </message>
        <message>
            <source>It never opens by itself: the condition is met, and the patient says yes.</source>
            <comment>edit.condition.how</comment>
            <translation>لا تُفتح من نفسها أبدًا: يتحقق الشرط، ويقول المريض نعم.</translation>
        </message>
        <message>
            <source>Copy</source>
            <comment>edit.copy</comment>
            <translation>نسخ</translation>
        </message>
        <message>
            <source>Copy the chosen exercise</source>
            <comment>edit.copy.name</comment>
            <translation>نسخ التمرين المختار</translation>
        </message>
        <message>
            <source>Days and rests</source>
            <comment>edit.days</comment>
            <translation>الأيام وفترات الراحة</translation>
        </message>
        <message>
            <source>Days a week</source>
            <comment>edit.days_a_week</comment>
            <translation>الأيام في الأسبوع</translation>
        </message>
        <message>
            <source>Dose, tempo, range</source>
            <comment>edit.dose</comment>
            <translation>الجرعة والإيقاع والمدى</translation>
        </message>
        <message>
            <source>{seconds} s</source>
            <comment>edit.dose.seconds</comment>
            <translation>{seconds} ث</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>edit.dose.times</comment>
            <translation>عدد المرات {count}</translation>
        </message>
        <message>
            <source>Usual: {dose} ({source})</source>
            <comment>edit.dose.usual</comment>
            <translation>المعتاد: {dose} ({source})</translation>
        </message>
        <message>
            <source>↓</source>
            <comment>edit.down</comment>
            <translation>↓</translation>
        </message>
        <message>
            <source>Move what is chosen down, Alt+Down</source>
            <comment>edit.down.name</comment>
            <translation>نقل المختار إلى أسفل، Alt+سهم أسفل</translation>
        </message>
        <message>
            <source>Emergency number</source>
            <comment>edit.emergency</comment>
            <translation>رقم الطوارئ</translation>
        </message>
        <message>
            <source>Said and printed with the signs that need help at once.</source>
            <comment>edit.emergency.how</comment>
            <translation>يُذكر ويُطبع مع العلامات التي تحتاج إلى مساعدة فورية.</translation>
        </message>
        <message>
            <source>Letters, digits, . _ and -. Sessions and conditions refer to it.</source>
            <comment>edit.entry.id.how</comment>
            <translation>حروف وأرقام و . _ و -. تشير إليه الجلسات والشروط.</translation>
        </message>
        <message>
            <source>Eyes</source>
            <comment>edit.eyes</comment>
            <translation>العينان</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>edit.eyes_closed</comment>
            <translation>العينان مغمضتان</translation>
        </message>
        <message>
            <source>Wrong: {text}</source>
            <comment>edit.fault</comment>
            <translation>خطأ: {text}</translation>
        </message>
        <message>
            <source>File</source>
            <comment>edit.file</comment>
            <translation>ملف</translation>
        </message>
        <message>
            <source>Find</source>
            <comment>edit.find</comment>
            <translation>بحث</translation>
        </message>
        <message>
            <source>There is no such exercise.</source>
            <comment>edit.find.none</comment>
            <translation>لا يوجد تمرين كهذا.</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>edit.finding.entries</comment>
            <translation>التمارين</translation>
        </message>
        <message>
            <source>Wrong: {field}: {text}</source>
            <comment>edit.finding.fault</comment>
            <translation>خطأ: {field}: {text}</translation>
        </message>
        <message>
            <source>{place}, {field}</source>
            <comment>edit.finding.in</comment>
            <translation>{place}، {field}</translation>
        </message>
        <message>
            <source>Note: {field}: {text}</source>
            <comment>edit.finding.remark</comment>
            <translation>ملاحظة: {field}: {text}</translation>
        </message>
        <message>
            <source>To put right, and to know (F8)</source>
            <comment>edit.findings</comment>
            <translation>للتصحيح وللعلم (F8)</translation>
        </message>
        <message>
            <source>How it is done</source>
            <comment>edit.form</comment>
            <translation>كيف يُؤدى</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <comment>edit.from_to</comment>
            <translation>من {low} إلى {high}</translation>
        </message>
        <message>
            <source>Good</source>
            <comment>edit.good</comment>
            <translation>حسنًا</translation>
        </message>
        <message>
            <source>Hand-over</source>
            <comment>edit.hand_over</comment>
            <translation>التسليم</translation>
        </message>
        <message>
            <source>Changed when the plan is handed out: in the review, under Files in and out.</source>
            <comment>edit.hand_over.how</comment>
            <translation>يتغير عند إعطاء الخطة: في المراجعة، تحت «ملفات واردة وصادرة».</translation>
        </message>
        <message>
            <source>The patient's files are locked. Keys that open them: {count}.</source>
            <comment>edit.hand_over.keys</comment>
            <translation>ملفات المريض مقفلة. عدد المفاتيح التي تفتحها: {count}.</translation>
        </message>
        <message>
            <source>Names no key yet: the patient can make no file for you with this plan.</source>
            <comment>edit.hand_over.nobody</comment>
            <translation>لا تذكر أي مفتاح بعد: لا يستطيع المريض بهذه الخطة أن يصنع لك أي ملف.</translation>
        </message>
        <message>
            <source>The patient's files are without a lock: anybody can read them.</source>
            <comment>edit.hand_over.plain</comment>
            <translation>ملفات المريض بلا قفل: يستطيع أي شخص قراءتها.</translation>
        </message>
        <message>
            <source>Who starts above that score</source>
            <comment>edit.high</comment>
            <translation>من يبدأ فوق هذه الدرجة</translation>
        </message>
        <message>
            <source>may rise a little from there</source>
            <comment>edit.high.baseline</comment>
            <translation>يجوز أن يرتفع قليلًا من هناك</translation>
        </message>
        <message>
            <source>Usual: seated work only, the stricter of the two ({source})</source>
            <comment>edit.high.how</comment>
            <translation>المعتاد: الجلوس فقط، وهو الأشد من الاثنين ({source})</translation>
        </message>
        <message>
            <source>does seated work only</source>
            <comment>edit.high.seated_only</comment>
            <translation>يتمرن جالسًا فقط</translation>
        </message>
        <message>
            <source>{what}, up to</source>
            <comment>edit.high_end</comment>
            <translation>{what}، حتى</translation>
        </message>
        <message>
            <source>ID</source>
            <comment>edit.id</comment>
            <translation>المعرّف</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.in_stage</comment>
            <translation>المرحلة</translation>
        </message>
        <message>
            <source>Item {number}</source>
            <comment>edit.item</comment>
            <translation>البند {number}</translation>
        </message>
        <message>
            <source>Add an item</source>
            <comment>edit.item.add</comment>
            <translation>إضافة بند</translation>
        </message>
        <message>
            <source>Remove item {number}</source>
            <comment>edit.item.remove</comment>
            <translation>إزالة البند {number}</translation>
        </message>
        <message>
            <source>Ladder over the weeks</source>
            <comment>edit.ladder</comment>
            <translation>سلم عبر الأسابيع</translation>
        </message>
        <message>
            <source>A posture that is held has neither tempo nor range to change.</source>
            <comment>edit.ladder.held</comment>
            <translation>الوضع الثابت ليس له إيقاع ولا مدى يتغيران.</translation>
        </message>
        <message>
            <source>Each step holds from its week on, until the next one.</source>
            <comment>edit.ladder.how</comment>
            <translation>تسري كل درجة من أسبوعها حتى التالية.</translation>
        </message>
        <message>
            <source>The last changes are in no file yet.</source>
            <comment>edit.leave</comment>
            <translation>آخر التغييرات ليست في أي ملف بعد.</translation>
        </message>
        <message>
            <source>Drop them</source>
            <comment>edit.leave.discard</comment>
            <translation>تركها</translation>
        </message>
        <message>
            <source>Save them</source>
            <comment>edit.leave.save</comment>
            <translation>حفظها</translation>
        </message>
        <message>
            <source>Stay here</source>
            <comment>edit.leave.stay</comment>
            <translation>البقاء هنا</translation>
        </message>
        <message>
            <source>{number}. {name}</source>
            <comment>edit.line.entry</comment>
            <translation>{number}. {name}</translation>
        </message>
        <message>
            <source>▲ wrong: {text}</source>
            <comment>edit.line.fault</comment>
            <translation>▲ خطأ: {text}</translation>
        </message>
        <message>
            <source>Stage {number}: {name}</source>
            <comment>edit.line.stage</comment>
            <translation>المرحلة {number}: {name}</translation>
        </message>
        <message>
            <source>Look for it ...</source>
            <comment>edit.look</comment>
            <translation>بحث ...</translation>
        </message>
        <message>
            <source>Kind of loss</source>
            <comment>edit.loss</comment>
            <translation>نوع الفقد</translation>
        </message>
        <message>
            <source>acute, one side</source>
            <comment>edit.loss.acute</comment>
            <translation>حاد، جهة واحدة</translation>
        </message>
        <message>
            <source>both sides</source>
            <comment>edit.loss.bilateral</comment>
            <translation>الجهتان</translation>
        </message>
        <message>
            <source>chronic, one side</source>
            <comment>edit.loss.chronic</comment>
            <translation>مزمن، جهة واحدة</translation>
        </message>
        <message>
            <source>other</source>
            <comment>edit.loss.other</comment>
            <translation>غير ذلك</translation>
        </message>
        <message>
            <source>{what}, from</source>
            <comment>edit.low</comment>
            <translation>{what}، من</translation>
        </message>
        <message>
            <source>Least share measured, 0 to 1</source>
            <comment>edit.measured</comment>
            <translation>أقل نسبة مقيسة، من 0 إلى 1</translation>
        </message>
        <message>
            <source>I found it met on</source>
            <comment>edit.met_on</comment>
            <translation>وجدته متحققًا في</translation>
        </message>
        <message>
            <source>Your own decision; it stands in place of the figures.</source>
            <comment>edit.met_on.how</comment>
            <translation>قرارك أنت؛ يقوم مقام القيم.</translation>
        </message>
        <message>
            <source>Met, as of today</source>
            <comment>edit.met_today</comment>
            <translation>متحقق من اليوم</translation>
        </message>
        <message>
            <source>Gaze stabilisation</source>
            <comment>edit.minutes</comment>
            <translation>تثبيت النظر</translation>
        </message>
        <message>
            <source>no figure</source>
            <comment>edit.minutes.none</comment>
            <translation>بلا رقم</translation>
        </message>
        <message>
            <source>About {minutes} min a day planned, all entries open and rests left out. Guideline, as quoted: {guideline}.</source>
            <comment>edit.minutes.said</comment>
            <translation>المخطط نحو {minutes} من الدقائق في اليوم، مع فتح كل البنود ومن دون فترات الراحة. الدليل كما يُقتبس: {guideline}.</translation>
        </message>
        <message>
            <source>gaze stabilisation: {minutes} min a day, guideline as quoted: {figure}</source>
            <comment>edit.minutes.short</comment>
            <translation>تثبيت النظر: {minutes} من الدقائق في اليوم، الدليل كما يُقتبس: {figure}</translation>
        </message>
        <message>
            <source>To each side of rest. Nothing in the plan may ask for more.</source>
            <comment>edit.neck.how</comment>
            <translation>من الراحة إلى كل جهة. لا يجوز أن يطلب شيء في الخطة أكثر.</translation>
        </message>
        <message>
            <source>Neck limit, nodding, degrees</source>
            <comment>edit.neck.pitch</comment>
            <translation>حد الرقبة، أعلى وأسفل، درجات</translation>
        </message>
        <message>
            <source>Neck limit, turning, degrees</source>
            <comment>edit.neck.yaw</comment>
            <translation>حد الرقبة، الاستدارة، درجات</translation>
        </message>
        <message>
            <source>New</source>
            <comment>edit.new</comment>
            <translation>جديدة</translation>
        </message>
        <message>
            <source>not in a file yet</source>
            <comment>edit.no_file</comment>
            <translation>ليست في ملف بعد</translation>
        </message>
        <message>
            <source>not said</source>
            <comment>edit.none</comment>
            <translation>لم يُذكر</translation>
        </message>
        <message>
            <source>Not saved: {why}. Everything is still here.</source>
            <comment>edit.not_saved</comment>
            <translation>لم تُحفظ: {why}. كل شيء ما زال هنا.</translation>
        </message>
        <message>
            <source>Not known while something is wrong with the plan.</source>
            <comment>edit.not_yet</comment>
            <translation>لا يُعرف ما دام في الخطة خطأ.</translation>
        </message>
        <message>
            <source>Your note</source>
            <comment>edit.note</comment>
            <translation>ملاحظتك</translation>
        </message>
        <message>
            <source>A note is asked for: {why}.</source>
            <comment>edit.note.asked</comment>
            <translation>تُطلب ملاحظة: {why}.</translation>
        </message>
        <message>
            <source>For you and your colleagues.</source>
            <comment>edit.note.how</comment>
            <translation>لك ولزملائك.</translation>
        </message>
        <message>
            <source>Least share on target, 0 to 1</source>
            <comment>edit.on_target</comment>
            <translation>أقل نسبة على الهدف، من 0 إلى 1</translation>
        </message>
        <message>
            <source>Open</source>
            <comment>edit.open</comment>
            <translation>فتح</translation>
        </message>
        <message>
            <source>Which plan?</source>
            <comment>edit.open.which</comment>
            <translation>أي خطة؟</translation>
        </message>
        <message>
            <source>closed</source>
            <comment>edit.option.closed</comment>
            <translation>مغمضتان</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>edit.option.eyes_closed</comment>
            <translation>العينان مغمضتان</translation>
        </message>
        <message>
            <source>firm</source>
            <comment>edit.option.firm</comment>
            <translation>ثابت</translation>
        </message>
        <message>
            <source>with head shakes</source>
            <comment>edit.option.head_shake</comment>
            <translation>مع هز الرأس</translation>
        </message>
        <message>
            <source>{option} (with a helper only)</source>
            <comment>edit.option.helper</comment>
            <translation>{option} (مع مساعد فقط)</translation>
        </message>
        <message>
            <source>none</source>
            <comment>edit.option.no_shake</comment>
            <translation>لا شيء</translation>
        </message>
        <message>
            <source>open</source>
            <comment>edit.option.open</comment>
            <translation>مفتوحتان</translation>
        </message>
        <message>
            <source>sitting</source>
            <comment>edit.option.sitting</comment>
            <translation>جالسًا</translation>
        </message>
        <message>
            <source>soft</source>
            <comment>edit.option.soft</comment>
            <translation>لين</translation>
        </message>
        <message>
            <source>soft surface</source>
            <comment>edit.option.soft_surface</comment>
            <translation>سطح لين</translation>
        </message>
        <message>
            <source>standing</source>
            <comment>edit.option.standing</comment>
            <translation>واقفًا</translation>
        </message>
        <message>
            <source>walking</source>
            <comment>edit.option.walking</comment>
            <translation>ماشيًا</translation>
        </message>
        <message>
            <source>marks on the wall</source>
            <comment>edit.option.wall</comment>
            <translation>علامات على الجدار</translation>
        </message>
        <message>
            <source>or seconds</source>
            <comment>edit.or_seconds</comment>
            <translation>أو الثواني</translation>
        </message>
        <message>
            <source>Parts of the plan</source>
            <comment>edit.outline</comment>
            <translation>أجزاء الخطة</translation>
        </message>
        <message>
            <source>the patient's own pace</source>
            <comment>edit.own_pace</comment>
            <translation>سرعة المريض نفسه</translation>
        </message>
        <message>
            <source>Person and days</source>
            <comment>edit.page.plan</comment>
            <translation>الشخص والأيام</translation>
        </message>
        <message>
            <source>Safety</source>
            <comment>edit.page.safety</comment>
            <translation>السلامة</translation>
        </message>
        <message>
            <source>Symptom rules</source>
            <comment>edit.page.symptoms</comment>
            <translation>قواعد الأعراض</translation>
        </message>
        <message>
            <source>Pseudonym</source>
            <comment>edit.person</comment>
            <translation>اسم مستعار</translation>
        </message>
        <message>
            <source>Never a real name: the file travels. With another one, the plan gets a new ID, and ticks and days found met are taken out.</source>
            <comment>edit.person.how</comment>
            <translation>لا تكتب اسمًا حقيقيًا أبدًا: الملف ينتقل. ومع اسم آخر تأخذ الخطة معرّفًا جديدًا، وتُحذف العلامات والأيام التي وُجد فيها شرط متحققًا.</translation>
        </message>
        <message>
            <source>Plan ID</source>
            <comment>edit.plan_id</comment>
            <translation>معرّف الخطة</translation>
        </message>
        <message>
            <source>Sessions belong to a plan by this ID. With another one, conditions begin to count anew.</source>
            <comment>edit.plan_id.how</comment>
            <translation>تنتمي الجلسات إلى الخطة بهذا المعرّف. ومع معرّف آخر تبدأ الشروط بالعد من جديد.</translation>
        </message>
        <message>
            <source>Posture</source>
            <comment>edit.posture</comment>
            <translation>الوضع</translation>
        </message>
        <message>
            <source>the whole plan</source>
            <comment>edit.preview.all</comment>
            <translation>الخطة كلها</translation>
        </message>
        <message>
            <source>Exercise</source>
            <comment>edit.preview.entry</comment>
            <translation>التمرين</translation>
        </message>
        <message>
            <source>What the patient sees</source>
            <comment>edit.preview.name</comment>
            <translation>ما يراه المريض</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.preview.stage</comment>
            <translation>المرحلة</translation>
        </message>
        <message>
            <source>Week</source>
            <comment>edit.preview.week</comment>
            <translation>الأسبوع</translation>
        </message>
        <message>
            <source>Range to each side, degrees</source>
            <comment>edit.range</comment>
            <translation>المدى إلى كل جهة، درجات</translation>
        </message>
        <message>
            <source>Usually not asked for.</source>
            <comment>edit.range.none</comment>
            <translation>لا يُطلب عادة.</translation>
        </message>
        <message>
            <source>Redo</source>
            <comment>edit.redo</comment>
            <translation>إعادة</translation>
        </message>
        <message>
            <source>Not given</source>
            <comment>edit.refused</comment>
            <translation>غير متاح</translation>
        </message>
        <message>
            <source>{option}: {why}</source>
            <comment>edit.refused.line</comment>
            <translation>{option}: {why}</translation>
        </message>
        <message>
            <source>To know: {text}.</source>
            <comment>edit.remark</comment>
            <translation>للعلم: {text}.</translation>
        </message>
        <message>
            <source>Remove</source>
            <comment>edit.remove</comment>
            <translation>إزالة</translation>
        </message>
        <message>
            <source>Remove what is chosen, Delete in the list</source>
            <comment>edit.remove.name</comment>
            <translation>إزالة المختار، Delete في القائمة</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>edit.repetitions</comment>
            <translation>عدد المرات</translation>
        </message>
        <message>
            <source>Replace it</source>
            <comment>edit.replace</comment>
            <translation>استبداله</translation>
        </message>
        <message>
            <source>{file} is there already. If you replace it, what it holds now is gone.</source>
            <comment>edit.replace.ask</comment>
            <translation>{file} موجود من قبل. إذا استبدلته ضاع ما فيه الآن.</translation>
        </message>
        <message>
            <source>{file} was changed by somebody else since you opened it. If you replace it, their changes are gone.</source>
            <comment>edit.replace.changed</comment>
            <translation>غيّر شخص آخر {file} بعد أن فتحته. إذا استبدلته فستضيع تغييراته.</translation>
        </message>
        <message>
            <source>Choose another name</source>
            <comment>edit.replace.other</comment>
            <translation>اختيار اسم آخر</translation>
        </message>
        <message>
            <source>Rest between entries, s</source>
            <comment>edit.rest</comment>
            <translation>الراحة بين البنود، ث</translation>
        </message>
        <message>
            <source>Most rise from a high start</source>
            <comment>edit.rise</comment>
            <translation>أكبر ارتفاع من بداية عالية</translation>
        </message>
        <message>
            <source>Needed where a rise is allowed.</source>
            <comment>edit.rise.how</comment>
            <translation>لازم حيث يُسمح بارتفاع.</translation>
        </message>
        <message>
            <source>Most rise of the score</source>
            <comment>edit.rise_most</comment>
            <translation>أكبر ارتفاع للدرجة</translation>
        </message>
        <message>
            <source>Step {number}, from week</source>
            <comment>edit.rung</comment>
            <translation>الدرجة {number}، من الأسبوع</translation>
        </message>
        <message>
            <source>Add a step</source>
            <comment>edit.rung.add</comment>
            <translation>إضافة درجة</translation>
        </message>
        <message>
            <source>as before</source>
            <comment>edit.rung.as_before</comment>
            <translation>كما قبل</translation>
        </message>
        <message>
            <source>Step {number}, degrees to each side</source>
            <comment>edit.rung.range</comment>
            <translation>الدرجة {number}، درجات الزاوية إلى كل جهة</translation>
        </message>
        <message>
            <source>Empty: as before.</source>
            <comment>edit.rung.range.how</comment>
            <translation>فارغ: كما قبل.</translation>
        </message>
        <message>
            <source>Remove step {number}</source>
            <comment>edit.rung.remove</comment>
            <translation>إزالة الدرجة {number}</translation>
        </message>
        <message>
            <source>Step {number}, beats a minute</source>
            <comment>edit.rung.tempo</comment>
            <translation>الدرجة {number}، نقرات في الدقيقة</translation>
        </message>
        <message>
            <source>Limits and help</source>
            <comment>edit.safety</comment>
            <translation>الحدود والمساعدة</translation>
        </message>
        <message>
            <source>Save</source>
            <comment>edit.save</comment>
            <translation>حفظ</translation>
        </message>
        <message>
            <source>Save the plan where?</source>
            <comment>edit.save.which</comment>
            <translation>أين تُحفظ الخطة؟</translation>
        </message>
        <message>
            <source>Save as</source>
            <comment>edit.save_as</comment>
            <translation>حفظ باسم</translation>
        </message>
        <message>
            <source>Highest score, of 10</source>
            <comment>edit.score</comment>
            <translation>أعلى درجة، من 10</translation>
        </message>
        <message>
            <source>Eyes to target, mm</source>
            <comment>edit.seat</comment>
            <translation>من العينين إلى الهدف، مم</translation>
        </message>
        <message>
            <source>Usual: 750, and not nearer (common practice)</source>
            <comment>edit.seat.how</comment>
            <translation>المعتاد: 750، وليس أقرب (ممارسة شائعة)</translation>
        </message>
        <message>
            <source>Sitting: about {cm} cm from the screen, or as far as the plan asks where that is more ({source}).</source>
            <comment>edit.seat.least</comment>
            <translation>جالسًا: على بعد نحو {cm} سم من الشاشة، أو بالبعد الذي تطلبه الخطة إن كان أكبر ({source}).</translation>
        </message>
        <message>
            <source>Seconds</source>
            <comment>edit.seconds</comment>
            <translation>الثواني</translation>
        </message>
        <message>
            <source>Sessions in a row</source>
            <comment>edit.sessions</comment>
            <translation>جلسات متتالية</translation>
        </message>
        <message>
            <source>Longest time to settle, minutes</source>
            <comment>edit.settle</comment>
            <translation>أطول وقت حتى الهدوء، دقائق</translation>
        </message>
        <message>
            <source>Most minutes to settle</source>
            <comment>edit.settle_most</comment>
            <translation>أكثر الدقائق حتى الهدوء</translation>
        </message>
        <message>
            <source>Sex</source>
            <comment>edit.sex</comment>
            <translation>الجنس</translation>
        </message>
        <message>
            <source>female</source>
            <comment>edit.sex.female</comment>
            <translation>أنثى</translation>
        </message>
        <message>
            <source>The tables know these two only.</source>
            <comment>edit.sex.how</comment>
            <translation>لا تعرف الجداول غير هذين.</translation>
        </message>
        <message>
            <source>male</source>
            <comment>edit.sex.male</comment>
            <translation>ذكر</translation>
        </message>
        <message>
            <source>Head shake</source>
            <comment>edit.shake</comment>
            <translation>هز الرأس</translation>
        </message>
        <message>
            <source>Sheet to print</source>
            <comment>edit.sheet</comment>
            <translation>ورقة للطباعة</translation>
        </message>
        <message>
            <source>Web page</source>
            <comment>edit.sheet.html</comment>
            <translation>صفحة ويب</translation>
        </message>
        <message>
            <source>No sheet yet: there are {count} to put right in the plan.</source>
            <comment>edit.sheet.not_yet</comment>
            <translation>لا ورقة بعد: ما يلزم تصحيحه في الخطة: {count}.</translation>
        </message>
        <message>
            <source>PDF, A4</source>
            <comment>edit.sheet.pdf_a4</comment>
            <translation>PDF، A4</translation>
        </message>
        <message>
            <source>PDF, Letter</source>
            <comment>edit.sheet.pdf_letter</comment>
            <translation>PDF، Letter</translation>
        </message>
        <message>
            <source>Where to put the patient's sheet? The ending is added.</source>
            <comment>edit.sheet.which</comment>
            <translation>أين توضع ورقة المريض؟ تُضاف نهاية الاسم تلقائيًا.</translation>
        </message>
        <message>
            <source>Written: {file}</source>
            <comment>edit.sheet.written</comment>
            <translation>كُتب: {file}</translation>
        </message>
        <message>
            <source>has a condition</source>
            <comment>edit.short.condition</comment>
            <translation>لها شرط</translation>
        </message>
        <message>
            <source>condition met</source>
            <comment>edit.short.met</comment>
            <translation>الشرط متحقق</translation>
        </message>
        <message>
            <source>condition not met</source>
            <comment>edit.short.not_met</comment>
            <translation>الشرط غير متحقق</translation>
        </message>
        <message>
            <source>As the patient sees it (F5)</source>
            <comment>edit.show</comment>
            <translation>كما يراها المريض (F5)</translation>
        </message>
        <message>
            <source>Affected side</source>
            <comment>edit.side</comment>
            <translation>الجهة المصابة</translation>
        </message>
        <message>
            <source>both</source>
            <comment>edit.side.both</comment>
            <translation>كلتاهما</translation>
        </message>
        <message>
            <source>left</source>
            <comment>edit.side.left</comment>
            <translation>اليسرى</translation>
        </message>
        <message>
            <source>right</source>
            <comment>edit.side.right</comment>
            <translation>اليمنى</translation>
        </message>
        <message>
            <source>unknown</source>
            <comment>edit.side.unknown</comment>
            <translation>غير معروفة</translation>
        </message>
        <message>
            <source>Stage</source>
            <comment>edit.stage</comment>
            <translation>المرحلة</translation>
        </message>
        <message>
            <source>Letters, digits, . _ and -. Conditions and entries refer to it.</source>
            <comment>edit.stage.id.how</comment>
            <translation>حروف وأرقام و . _ و -. تشير إليه الشروط والبنود.</translation>
        </message>
        <message>
            <source>Name</source>
            <comment>edit.stage.name</comment>
            <translation>الاسم</translation>
        </message>
        <message>
            <source>The patient reads it.</source>
            <comment>edit.stage.name.how</comment>
            <translation>يقرؤه المريض.</translation>
        </message>
        <message>
            <source>New stage</source>
            <comment>edit.stage.new</comment>
            <translation>مرحلة جديدة</translation>
        </message>
        <message>
            <source>Takes</source>
            <comment>edit.stage.takes</comment>
            <translation>تستغرق</translation>
        </message>
        <message>
            <source>About {minutes} minutes with rests; up to {most} is common practice.</source>
            <comment>edit.stage.takes.said</comment>
            <translation>نحو {minutes} من الدقائق مع الراحة؛ حتى {most} ممارسة شائعة.</translation>
        </message>
        <message>
            <source>So far</source>
            <comment>edit.standing</comment>
            <translation>حتى الآن</translation>
        </message>
        <message>
            <source>Met: {why}. Nothing opens by itself.</source>
            <comment>edit.standing.met</comment>
            <translation>متحقق: {why}. لا يُفتح شيء من نفسه.</translation>
        </message>
        <message>
            <source>No sessions at hand. Opened from the review of a folder, this says whether it is met.</source>
            <comment>edit.standing.no_sessions</comment>
            <translation>لا جلسات متاحة. إذا فُتح هذا من مراجعة مجلد، قال هل تحقق الشرط.</translation>
        </message>
        <message>
            <source>Not met: {why}.</source>
            <comment>edit.standing.not_met</comment>
            <translation>غير متحقق: {why}.</translation>
        </message>
        <message>
            <source>Begin with nothing</source>
            <comment>edit.start.empty</comment>
            <translation>البدء من لا شيء</translation>
        </message>
        <message>
            <source>No exercises yet; usual days, rests and symptom rules.</source>
            <comment>edit.start.empty.how</comment>
            <translation>بلا تمارين بعد؛ أيام وفترات راحة وقواعد أعراض معتادة.</translation>
        </message>
        <message>
            <source>Open a plan</source>
            <comment>edit.start.file</comment>
            <translation>فتح خطة</translation>
        </message>
        <message>
            <source>A plan that is in a file already.</source>
            <comment>edit.start.file.how</comment>
            <translation>خطة موجودة في ملف.</translation>
        </message>
        <message>
            <source>Go on from the plan of {person}</source>
            <comment>edit.start.last</comment>
            <translation>المتابعة من خطة {person}</translation>
        </message>
        <message>
            <source>Plan {plan}. Its sessions go on to count, and each condition says whether it is met.</source>
            <comment>edit.start.last.how</comment>
            <translation>الخطة {plan}، آخر ما تُمرن عليه. تبقى جلساتها محسوبة، ويقول كل شرط هل تحقق.</translation>
        </message>
        <message>
            <source>Open this plan</source>
            <comment>edit.start.named</comment>
            <translation>افتح هذه الخطة</translation>
        </message>
        <message>
            <source>These sessions were practised with a plan that has no pseudonym. Open it, set the pseudonym of one person, and save it as another file. Do so for each person.</source>
            <comment>edit.start.named.how</comment>
            <translation>جرى التدرّب في هذه الجلسات بخطة بلا اسم مستعار. افتحها، وضع الاسم المستعار لشخص واحد، واحفظها في ملف آخر. افعل ذلك لكل شخص.</translation>
        </message>
        <message>
            <source>The plan of these sessions</source>
            <comment>edit.start.named.which</comment>
            <translation>خطة هذه الجلسات</translation>
        </message>
        <message>
            <source>Begin with these stages</source>
            <comment>edit.start.starter</comment>
            <translation>البدء بهذه المراحل</translation>
        </message>
        <message>
            <source>The home programme in stages, with usual doses. Each stage opens after calm sessions with the one before. Leave out what you don't want.</source>
            <comment>edit.start.starter.how</comment>
            <translation>برنامج البيت في مراحل، بجرعات معتادة. تُفتح كل مرحلة بعد جلسات هادئة مع التي قبلها. اترك ما لا تريده.</translation>
        </message>
        <message>
            <source>Begin a plan</source>
            <comment>edit.start.title</comment>
            <translation>بدء خطة</translation>
        </message>
        <message>
            <source>Begins on</source>
            <comment>edit.starts_on</comment>
            <translation>تبدأ في</translation>
        </message>
        <message>
            <source>A day as in 2026-01-31. Ladders count their weeks from it.</source>
            <comment>edit.starts_on.how</comment>
            <translation>يوم مثل ⁦2026-01-31⁩. تعدّ السلالم أسابيعها منه.</translation>
        </message>
        <message>
            <source>{file}  ·  {saved}  ·  {found}</source>
            <comment>edit.state</comment>
            <translation>{file}  ·  {saved}  ·  {found}</translation>
        </message>
        <message>
            <source>changed, not saved</source>
            <comment>edit.state.changed</comment>
            <translation>تغيرت ولم تُحفظ</translation>
        </message>
        <message>
            <source>not finished, to put right: {count}</source>
            <comment>edit.state.faults</comment>
            <translation>للتصحيح قبل الحفظ: {count}</translation>
        </message>
        <message>
            <source>nothing changed yet</source>
            <comment>edit.state.new</comment>
            <translation>لم يتغير شيء بعد</translation>
        </message>
        <message>
            <source>notes: {count}  ·  {minutes}</source>
            <comment>edit.state.remarks</comment>
            <translation>ملاحظات: {count}  ·  {minutes}</translation>
        </message>
        <message>
            <source>saved</source>
            <comment>edit.state.saved</comment>
            <translation>حُفظت</translation>
        </message>
        <message>
            <source>Choose how to begin.</source>
            <comment>edit.state.start</comment>
            <translation>اختر كيف تبدأ.</translation>
        </message>
        <message>
            <source>Exercise added</source>
            <comment>edit.step.add</comment>
            <translation>أُضيف تمرين</translation>
        </message>
        <message>
            <source>Checklist item added</source>
            <comment>edit.step.add_item</comment>
            <translation>أُضيف بند إلى القائمة</translation>
        </message>
        <message>
            <source>Ladder step added</source>
            <comment>edit.step.add_rung</comment>
            <translation>أُضيفت درجة إلى السلم</translation>
        </message>
        <message>
            <source>Stage added</source>
            <comment>edit.step.add_stage</comment>
            <translation>أُضيفت مرحلة</translation>
        </message>
        <message>
            <source>Condition added</source>
            <comment>edit.step.add_unlock</comment>
            <translation>أُضيف شرط</translation>
        </message>
        <message>
            <source>Copied</source>
            <comment>edit.step.copy</comment>
            <translation>نُسخ</translation>
        </message>
        <message>
            <source>Condition found met</source>
            <comment>edit.step.met</comment>
            <translation>عُدّ الشرط متحققًا</translation>
        </message>
        <message>
            <source>Moved</source>
            <comment>edit.step.move</comment>
            <translation>نُقل</translation>
        </message>
        <message>
            <source>Removed</source>
            <comment>edit.step.remove</comment>
            <translation>أُزيل</translation>
        </message>
        <message>
            <source>Condition removed</source>
            <comment>edit.step.remove_unlock</comment>
            <translation>أُزيل شرط</translation>
        </message>
        <message>
            <source>Ranges and tempo of the baseline taken over</source>
            <comment>edit.step.take_baseline</comment>
            <translation>أُخذت مديات القياس المرجعي وإيقاعه</translation>
        </message>
        <message>
            <source>Begins today</source>
            <comment>edit.step.today</comment>
            <translation>تبدأ اليوم</translation>
        </message>
        <message>
            <source>{what}</source>
            <comment>edit.step.value</comment>
            <translation>{what}</translation>
        </message>
        <message>
            <source>Support</source>
            <comment>edit.support</comment>
            <translation>السند</translation>
        </message>
        <message>
            <source>corner and stable chair</source>
            <comment>edit.support.corner_and_chair</comment>
            <translation>ركن وكرسي ثابت</translation>
        </message>
        <message>
            <source>helper within arm's reach</source>
            <comment>edit.support.helper</comment>
            <translation>مساعد في متناول الذراع</translation>
        </message>
        <message>
            <source>what it takes: {support}</source>
            <comment>edit.support.least</comment>
            <translation>ما يلزم: {support}</translation>
        </message>
        <message>
            <source>none</source>
            <comment>edit.support.none</comment>
            <translation>لا شيء</translation>
        </message>
        <message>
            <source>Surface</source>
            <comment>edit.surface</comment>
            <translation>السطح</translation>
        </message>
        <message>
            <source>Enough for today</source>
            <comment>edit.symptoms</comment>
            <translation>يكفي لليوم</translation>
        </message>
        <message>
            <source>For the published tables of chair stands only</source>
            <comment>edit.tables</comment>
            <translation>للجداول المنشورة عن القيام عن الكرسي فقط</translation>
        </message>
        <message>
            <source>Tempo, beats a minute</source>
            <comment>edit.tempo</comment>
            <translation>الإيقاع، نقرات في الدقيقة</translation>
        </message>
        <message>
            <source>fixed</source>
            <comment>edit.tempo.fixed</comment>
            <translation>ثابت</translation>
        </message>
        <message>
            <source>changes within the set</source>
            <comment>edit.tempo.pair</comment>
            <translation>يتغير ضمن المجموعة</translation>
        </message>
        <message>
            <source>as usual: {usual}</source>
            <comment>edit.tempo.usual</comment>
            <translation>كالمعتاد: {usual}</translation>
        </message>
        <message>
            <source>Plan</source>
            <comment>edit.title</comment>
            <translation>الخطة</translation>
        </message>
        <message>
            <source>to</source>
            <comment>edit.to</comment>
            <translation>إلى</translation>
        </message>
        <message>
            <source>Today</source>
            <comment>edit.today</comment>
            <translation>اليوم</translation>
        </message>
        <message>
            <source>Undo</source>
            <comment>edit.undo</comment>
            <translation>تراجع</translation>
        </message>
        <message>
            <source>Not finished: {count} to put right. It can be kept and opened here again, but nobody can practise it.</source>
            <comment>edit.unfinished</comment>
            <translation>غير مكتملة: للتصحيح: {count}. يمكن الاحتفاظ بها وفتحها هنا من جديد، لكن لا أحد يستطيع التمرن حسبها.</translation>
        </message>
        <message>
            <source>Save it unfinished</source>
            <comment>edit.unfinished.save</comment>
            <translation>حفظها غير مكتملة</translation>
        </message>
        <message>
            <source>Show me the first</source>
            <comment>edit.unfinished.show</comment>
            <translation>عرض الأول</translation>
        </message>
        <message>
            <source>Opens when</source>
            <comment>edit.unlock</comment>
            <translation>تُفتح عندما</translation>
        </message>
        <message>
            <source>Set a condition</source>
            <comment>edit.unlock.add</comment>
            <translation>وضع شرط</translation>
        </message>
        <message>
            <source>Open from the start.</source>
            <comment>edit.unlock.none</comment>
            <translation>مفتوحة من البداية.</translation>
        </message>
        <message>
            <source>Take the condition away</source>
            <comment>edit.unlock.remove</comment>
            <translation>إزالة الشرط</translation>
        </message>
        <message>
            <source>↑</source>
            <comment>edit.up</comment>
            <translation>↑</translation>
        </message>
        <message>
            <source>Move what is chosen up, Alt+Up</source>
            <comment>edit.up.name</comment>
            <translation>نقل المختار إلى أعلى، Alt+سهم أعلى</translation>
        </message>
        <message>
            <source>Usual: {usual}</source>
            <comment>edit.usual</comment>
            <translation>المعتاد: {usual}</translation>
        </message>
        <message>
            <source>Usual: {usual} ({source})</source>
            <comment>edit.usual.from</comment>
            <translation>المعتاد: {usual} ({source})</translation>
        </message>
        <message>
            <source>Marks on the wall</source>
            <comment>edit.wall</comment>
            <translation>علامات على الجدار</translation>
        </message>
        <message>
            <source>Above the camera, in mm</source>
            <comment>edit.wall.above</comment>
            <translation>فوق الكاميرا، بالمليمتر</translation>
        </message>
        <message>
            <source>Usual: 100, so that the mark shows above the screen. Below zero: lower.</source>
            <comment>edit.wall.above.how</comment>
            <translation>المعتاد: 100، لتظهر العلامة فوق الشاشة. تحت الصفر: أخفض.</translation>
        </message>
        <message>
            <source>From the eyes to the wall, in mm</source>
            <comment>edit.wall.distance</comment>
            <translation>من العينين إلى الجدار، بالمليمتر</translation>
        </message>
        <message>
            <source>In place of the screen. Leave all of it empty for a target on the screen. Once something stands here, the patient is asked to measure what is left out.</source>
            <comment>edit.wall.how</comment>
            <translation>بدلًا من الشاشة. اترك كل شيء فارغًا إن كان الهدف على الشاشة. متى كُتب شيء هنا يُطلب من المريض أن يقيس ما ينقص.</translation>
        </message>
        <message>
            <source>To the right of the camera, in mm</source>
            <comment>edit.wall.right</comment>
            <translation>إلى يمين الكاميرا، بالمليمتر</translation>
        </message>
        <message>
            <source>Usual: 0. As the patient sees it; of two marks their middle. Below zero: to the left.</source>
            <comment>edit.wall.right.how</comment>
            <translation>المعتاد: 0. كما يراه المريض، ومع علامتين منتصفهما. تحت الصفر: إلى اليسار.</translation>
        </message>
        <message>
            <source>From mark to mark, in mm</source>
            <comment>edit.wall.spacing</comment>
            <translation>من علامة إلى علامة، بالمليمتر</translation>
        </message>
        <message>
            <source>So that each mark lies {low} to {high} degrees from the middle.</source>
            <comment>edit.wall.spacing.how</comment>
            <translation>بحيث تبعد كل علامة من {low} إلى {high} من الدرجات عن الوسط.</translation>
        </message>
        <message>
            <source>Person</source>
            <comment>edit.who</comment>
            <translation>الشخص</translation>
        </message>
        <message>
            <source>Your words</source>
            <comment>edit.words</comment>
            <translation>كلماتك</translation>
        </message>
        <message>
            <source>Read before each practice, and on the printed sheet.</source>
            <comment>edit.words.how</comment>
            <translation>تُقرأ قبل كل تمرين، وعلى الورقة المطبوعة.</translation>
        </message>
        <message>
            <source>To the patient</source>
            <comment>edit.words.title</comment>
            <translation>إلى المريض</translation>
        </message>
        <message>
            <source>chin down</source>
            <comment>event.chin_down</comment>
            <translation>الذقن منخفض</translation>
        </message>
        <message>
            <source>eyes closed</source>
            <comment>event.eyes_closed</comment>
            <translation>أُغمضت العينان</translation>
        </message>
        <message>
            <source>eyes stayed behind</source>
            <comment>event.eyes_not_with_head</comment>
            <translation>تأخرت العينان</translation>
        </message>
        <message>
            <source>eyes opened</source>
            <comment>event.eyes_opened</comment>
            <translation>فُتحت العينان</translation>
        </message>
        <message>
            <source>eyes left the target</source>
            <comment>event.gaze_off_target</comment>
            <translation>تركت العينان الهدف</translation>
        </message>
        <message>
            <source>eyes stopped short</source>
            <comment>event.gaze_short</comment>
            <translation>توقفت العينان قبل الهدف</translation>
        </message>
        <message>
            <source>head went before the eyes</source>
            <comment>event.head_first</comment>
            <translation>ذهب الرأس قبل العينين</translation>
        </message>
        <message>
            <source>head moved along</source>
            <comment>event.head_moved</comment>
            <translation>تحرك الرأس أيضًا</translation>
        </message>
        <message>
            <source>head turned, not tilted</source>
            <comment>event.head_turned</comment>
            <translation>الرأس دار ولم يمِل</translation>
        </message>
        <message>
            <source>head went with the target</source>
            <comment>event.head_with_target</comment>
            <translation>ذهب الرأس مع الهدف</translation>
        </message>
        <message>
            <source>out of the picture</source>
            <comment>event.left_picture</comment>
            <translation>خارج الصورة</translation>
        </message>
        <message>
            <source>eyes and head went together</source>
            <comment>event.moved_together</comment>
            <translation>ذهبت العينان والرأس معًا</translation>
        </message>
        <message>
            <source>not measured for a while</source>
            <comment>event.not_measured</comment>
            <translation>لم يُقس لبعض الوقت</translation>
        </message>
        <message>
            <source>not all the way up</source>
            <comment>event.not_upright</comment>
            <translation>لم يستقم تمامًا</translation>
        </message>
        <message>
            <source>once</source>
            <comment>event.once</comment>
            <translation>(مرة واحدة)</translation>
        </message>
        <message>
            <source>{code}</source>
            <comment>event.other</comment>
            <translation>{code}</translation>
        </message>
        <message>
            <source>a sudden drop of the head</source>
            <comment>event.possible_fall</comment>
            <translation>هبوط مفاجئ للرأس</translation>
        </message>
        <message>
            <source>throws below the eyes</source>
            <comment>event.throw_low</comment>
            <translation>رميات تحت مستوى العينين</translation>
        </message>
        <message>
            <source>{count} times</source>
            <comment>event.times</comment>
            <translation>(عدد المرات: {count})</translation>
        </message>
        <message>
            <source>faster than the beat</source>
            <comment>event.too_fast</comment>
            <translation>أسرع من الإيقاع</translation>
        </message>
        <message>
            <source>turns larger than asked</source>
            <comment>event.too_large</comment>
            <translation>حركات أكبر من المطلوب</translation>
        </message>
        <message>
            <source>slower than the beat</source>
            <comment>event.too_slow</comment>
            <translation>أبطأ من الإيقاع</translation>
        </message>
        <message>
            <source>turns a little small</source>
            <comment>event.too_small</comment>
            <translation>حركات صغيرة قليلًا</translation>
        </message>
        <message>
            <source>Back (Esc)</source>
            <comment>exchange.back</comment>
            <translation>رجوع (Esc)</translation>
        </message>
        <message>
            <source>{name} (not this computer)</source>
            <comment>exchange.elsewhere</comment>
            <translation>{name} (ليس هذا الحاسوب)</translation>
        </message>
        <message>
            <source>Not done: {why}</source>
            <comment>exchange.failed</comment>
            <translation>لم يتم: {why}</translation>
        </message>
        <message>
            <source>Hand out a plan</source>
            <comment>exchange.give</comment>
            <translation>إعطاء خطة</translation>
        </message>
        <message>
            <source>Hand out a plan without a lock</source>
            <comment>exchange.give_plain</comment>
            <translation>إعطاء خطة بلا قفل</translation>
        </message>
        <message>
            <source>Written: {path}</source>
            <comment>exchange.given</comment>
            <translation>كُتب: {path}</translation>
        </message>
        <message>
            <source>{name} (this computer)</source>
            <comment>exchange.here</comment>
            <translation>{name} (هذا الحاسوب)</translation>
        </message>
        <message>
            <source>From a patient</source>
            <comment>exchange.in</comment>
            <translation>من مريض</translation>
        </message>
        <message>
            <source>Takes the sessions out of a file that a patient has made, into the folder that is open. You can also drop the file on this window. The file itself stays where it is.</source>
            <comment>exchange.in.how</comment>
            <translation>يأخذ الجلسات من ملف صنعه مريض إلى المجلد المفتوح. يمكنك أيضًا أن تُسقط الملف على هذه النافذة. يبقى الملف نفسه في مكانه.</translation>
        </message>
        <message>
            <source>Keep other computers' keys in the plan</source>
            <comment>exchange.keep</comment>
            <translation>أبقِ مفاتيح الحواسيب الأخرى في الخطة</translation>
        </message>
        <message>
            <source>The clinic's key</source>
            <comment>exchange.key</comment>
            <translation>مفتاح العيادة</translation>
        </message>
        <message>
            <source>Bring in a key</source>
            <comment>exchange.key.bring</comment>
            <translation>إحضار مفتاح</translation>
        </message>
        <message>
            <source>The key {name} is here now.</source>
            <comment>exchange.key.brought</comment>
            <translation>المفتاح {name} هنا الآن.</translation>
        </message>
        <message>
            <source>Copied to {path}</source>
            <comment>exchange.key.copied</comment>
            <translation>نُسخ إلى {path}</translation>
        </message>
        <message>
            <source>Copy the key</source>
            <comment>exchange.key.copy</comment>
            <translation>نسخ المفتاح</translation>
        </message>
        <message>
            <source>A safe place for the copy</source>
            <comment>exchange.key.copy_where</comment>
            <translation>مكان آمن للنسخة</translation>
        </message>
        <message>
            <source>On this computer: {names}.</source>
            <comment>exchange.key.has</comment>
            <translation>على هذا الحاسوب: {names}.</translation>
        </message>
        <message>
            <source>A key lies behind a passphrase. If either is lost, what patients hand over can't be read by anybody: keep a copy in a safe place.</source>
            <comment>exchange.key.how</comment>
            <translation>المفتاح خلف عبارة مرور. إذا ضاع أحدهما، فلن يستطيع أحد قراءة ما يسلمه المرضى: احتفظ بنسخة في مكان آمن.</translation>
        </message>
        <message>
            <source>Keys (*.age);;All files (*)</source>
            <comment>exchange.key.kinds</comment>
            <translation>مفاتيح (*.age);;كل الملفات (*)</translation>
        </message>
        <message>
            <source>The key {name} is made. Copy it to a safe place now.</source>
            <comment>exchange.key.made</comment>
            <translation>صُنع المفتاح {name}. انسخه الآن إلى مكان آمن.</translation>
        </message>
        <message>
            <source>Make a key</source>
            <comment>exchange.key.make</comment>
            <translation>صنع مفتاح</translation>
        </message>
        <message>
            <source>There is no key on this computer. Make one, or bring in the copy of a key that the clinic has already.</source>
            <comment>exchange.key.none</comment>
            <translation>لا يوجد مفتاح على هذا الحاسوب. اصنع مفتاحًا، أو أحضر نسخة من مفتاح عند العيادة.</translation>
        </message>
        <message>
            <source>The copy of the key</source>
            <comment>exchange.key.which</comment>
            <translation>نسخة المفتاح</translation>
        </message>
        <message>
            <source>Files from patients (*.age *.turnpost);;All files (*)</source>
            <comment>exchange.kinds</comment>
            <translation>ملفات من المرضى (*.age *.turnpost);;كل الملفات (*)</translation>
        </message>
        <message>
            <source>A file that came in between was not taken in. Take it in now.</source>
            <comment>exchange.missed</comment>
            <translation>جاء ملف في الأثناء ولم يُؤخذ. خذه الآن.</translation>
        </message>
        <message>
            <source>the folder {folder} is not there; connect its disk, or open another folder</source>
            <comment>exchange.no_folder</comment>
            <translation>المجلد {folder} غير موجود؛ صِل قرصه أو افتح مجلدًا آخر</translation>
        </message>
        <message>
            <source>no pseudonym</source>
            <comment>exchange.nobody</comment>
            <translation>بلا اسم مستعار</translation>
        </message>
        <message>
            <source>Files in and out</source>
            <comment>exchange.open</comment>
            <translation>ملفات واردة وصادرة</translation>
        </message>
        <message>
            <source>What the patient hands over opens with: {names}.</source>
            <comment>exchange.opens</comment>
            <translation>ما يسلمه المريض يُفتح بـ: {names}.</translation>
        </message>
        <message>
            <source>Left as they are, although the file has other versions of them: {names}.</source>
            <comment>exchange.other</comment>
            <translation>تُركت كما هي، مع أن في الملف نسخًا أخرى منها: {names}.</translation>
        </message>
        <message>
            <source>To a patient</source>
            <comment>exchange.out</comment>
            <translation>إلى مريض</translation>
        </message>
        <message>
            <source>Writes a plan that names keys. What the patient hands over opens with each of them, on any computer that has it. Was a key stolen? Then make a new one, leave the stolen one out, hand the plan out again, and read its words to the patient in a call.</source>
            <comment>exchange.out.how</comment>
            <translation>يكتب خطة تذكر مفاتيح. ما يسلمه المريض يُفتح بأي منها، على أي حاسوب فيه ذلك المفتاح. هل سُرق مفتاح؟ اصنع مفتاحًا جديدًا، واترك المسروق خارج الخطة، وسلّم الخطة من جديد، واقرأ كلماتها على المريض في مكالمة.</translation>
        </message>
        <message>
            <source>The same once more</source>
            <comment>exchange.pass.again</comment>
            <translation>نفسها مرة أخرى</translation>
        </message>
        <message>
            <source>Passphrase of the key in the copy</source>
            <comment>exchange.pass.brought</comment>
            <translation>عبارة مرور المفتاح الذي في النسخة</translation>
        </message>
        <message>
            <source>Leave it</source>
            <comment>exchange.pass.cancel</comment>
            <translation>ترك ذلك</translation>
        </message>
        <message>
            <source>The two are not the same.</source>
            <comment>exchange.pass.differ</comment>
            <translation>الاثنتان غير متطابقتين.</translation>
        </message>
        <message>
            <source>A passphrase for the new key: three or four words that nobody would guess</source>
            <comment>exchange.pass.new</comment>
            <translation>عبارة مرور للمفتاح الجديد: ثلاث كلمات أو أربع لا يخمنها أحد</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>exchange.pass.ok</comment>
            <translation>متابعة</translation>
        </message>
        <message>
            <source>Passphrase of the clinic's key</source>
            <comment>exchange.pass.open</comment>
            <translation>عبارة مرور مفتاح العيادة</translation>
        </message>
        <message>
            <source>Without a lock anybody who gets hold of a patient's file can read it: e-mail providers, whoever finds a stick. The plan and the patient's program will say so. Is that meant?</source>
            <comment>exchange.plain.ask</comment>
            <translation>بلا قفل يستطيع كل من يحصل على ملف المريض قراءته: مزودو البريد، ومن يجد ذاكرة محمولة. ستقول الخطة وبرنامج المريض ذلك. هل هذا مقصود؟</translation>
        </message>
        <message>
            <source>No</source>
            <comment>exchange.plain.no</comment>
            <translation>لا</translation>
        </message>
        <message>
            <source>This clinic has chosen files without a lock. A key changes that.</source>
            <comment>exchange.plain.on</comment>
            <translation>اختارت هذه العيادة ملفات بلا قفل. المفتاح يغير ذلك.</translation>
        </message>
        <message>
            <source>Yes, without a lock</source>
            <comment>exchange.plain.yes</comment>
            <translation>نعم، بلا قفل</translation>
        </message>
        <message>
            <source>Plans (*.json)</source>
            <comment>exchange.plans</comment>
            <translation>الخطط (*.json)</translation>
        </message>
        <message>
            <source>Take in a file</source>
            <comment>exchange.take</comment>
            <translation>استلام ملف</translation>
        </message>
        <message>
            <source>{person}: new sessions {new}, here before {known}.</source>
            <comment>exchange.taken</comment>
            <translation>{person}: جلسات جديدة {new}، موجودة من قبل {known}.</translation>
        </message>
        <message>
            <source>Show the words of a plan</source>
            <comment>exchange.tell</comment>
            <translation>عرض كلمات خطة</translation>
        </message>
        <message>
            <source>Files from and to patients</source>
            <comment>exchange.title</comment>
            <translation>ملفات من المرضى وإليهم</translation>
        </message>
        <message>
            <source>This file was not locked.</source>
            <comment>exchange.was_plain</comment>
            <translation>لم يكن هذا الملف مقفلًا.</translation>
        </message>
        <message>
            <source>Where to put the plan for the patient</source>
            <comment>exchange.where</comment>
            <translation>أين توضع خطة المريض</translation>
        </message>
        <message>
            <source>Which plan?</source>
            <comment>exchange.which</comment>
            <translation>أي خطة؟</translation>
        </message>
        <message>
            <source>Its words:  {words}</source>
            <comment>exchange.words</comment>
            <translation>كلماتها:  {words}</translation>
        </message>
        <message>
            <source>Working ...</source>
            <comment>exchange.working</comment>
            <translation>جارٍ العمل ...</translation>
        </message>
        <message>
            <source>Sway from toes to heels</source>
            <comment>exercise.ankle-sway</comment>
            <translation>مِل من أصابع القدم إلى الكعب</translation>
        </message>
        <message>
            <source>Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at the hips. Look straight ahead.</source>
            <comment>exercise.ankle-sway.how</comment>
            <translation>قف مستقيمًا. مِل ببطء نحو أصابع قدميك، ثم نحو كعبيك. اثنِ كاحليك لا وركيك. انظر إلى الأمام.</translation>
        </message>
        <message>
            <source>Stands for half a minute</source>
            <comment>exercise.chair-stands-30-s</comment>
            <translation>قف واجلس نصف دقيقة</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down as often as is safe, until you hear the end.</source>
            <comment>exercise.chair-stands-30-s.how</comment>
            <translation>اشبك ذراعيك على صدرك. قف واجلس بقدر ما هو آمن، حتى تسمع النهاية.</translation>
        </message>
        <message>
            <source>Five stands from a chair</source>
            <comment>exercise.chair-stands-five</comment>
            <translation>قف عن الكرسي خمس مرات</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down, as fast as is safe.</source>
            <comment>exercise.chair-stands-five.how</comment>
            <translation>اشبك ذراعيك على صدرك. قف واجلس، بأسرع ما هو آمن.</translation>
        </message>
        <message>
            <source>Move your eyes, head still</source>
            <comment>exercise.eyes-side-to-side</comment>
            <translation>حرّك عينيك إلى الجانبين، والرأس ثابت</translation>
        </message>
        <message>
            <source>Your eyes jump to the target at each beat. Your head stays still.</source>
            <comment>exercise.eyes-side-to-side.how</comment>
            <translation>تقفز عيناك إلى الهدف مع كل نقرة. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Eyes first, then head</source>
            <comment>exercise.eyes-then-head</comment>
            <translation>العينان أولًا ثم الرأس</translation>
        </message>
        <message>
            <source>Look at one mark with your eyes. Then turn your head to it. Now look at the other mark, and turn again.</source>
            <comment>exercise.eyes-then-head.how</comment>
            <translation>انظر إلى علامة بعينيك. ثم أدر رأسك إليها. انظر الآن إلى العلامة الأخرى، وأدر رأسك من جديد.</translation>
        </message>
        <message>
            <source>Move your eyes up and down, head still</source>
            <comment>exercise.eyes-up-down</comment>
            <translation>حرّك عينيك إلى أعلى وأسفل، والرأس ثابت</translation>
        </message>
        <message>
            <source>Your eyes jump to the target at each beat, a short way at first. Your head stays still.</source>
            <comment>exercise.eyes-up-down.how</comment>
            <translation>تقفز عيناك إلى الهدف مع كل نقرة، لمسافة قصيرة في البداية. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Pick up from the floor</source>
            <comment>exercise.floor-reach</comment>
            <translation>التقط شيئًا من الأرض</translation>
        </message>
        <message>
            <source>Bend and lay a small thing on the floor. Sit up tall. Bend and pick it up. Sit up tall. Your eyes stay on it. Change arms half way through.</source>
            <comment>exercise.floor-reach.how</comment>
            <translation>انحنِ وضع شيئًا صغيرًا على الأرض. اجلس مستقيمًا. انحنِ والتقطه. اجلس مستقيمًا. تبقى عيناك عليه. بدّل الذراع عند المنتصف.</translation>
        </message>
        <message>
            <source>Follow the target with your eyes</source>
            <comment>exercise.follow-slowly</comment>
            <translation>اتبع الهدف بعينيك</translation>
        </message>
        <message>
            <source>The target moves slowly. Your eyes go with it. Your head stays still.</source>
            <comment>exercise.follow-slowly.how</comment>
            <translation>يتحرك الهدف ببطء. تتبعه عيناك. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Toss from hand to hand</source>
            <comment>exercise.hand-toss</comment>
            <translation>ارمِ من يد إلى يد</translation>
        </message>
        <message>
            <source>Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your eyes and head go with it. If it drops, let it lie and take a new one. Stay far back, so that both hands stay in the picture.</source>
            <comment>exercise.hand-toss.how</comment>
            <translation>ارمِ كرة لينة أو جوربًا ملفوفًا من يد إلى يد، فوق عينيك بقليل. دع عينيك ورأسك يتبعانها. إذا سقطت فاتركها وخذ غيرها. ابقَ بعيدًا بما يكفي لتبقى يداك في الصورة.</translation>
        </message>
        <message>
            <source>Tilt your head</source>
            <comment>exercise.head-tilts</comment>
            <translation>أمِل رأسك</translation>
        </message>
        <message>
            <source>Tip your ear to your right shoulder, then to your left. Go slowly. Look straight ahead.</source>
            <comment>exercise.head-tilts.how</comment>
            <translation>أمِل أذنك نحو كتفك الأيمن، ثم نحو الأيسر. تحرك ببطء. انظر إلى الأمام.</translation>
        </message>
        <message>
            <source>Look past a moving scene</source>
            <comment>exercise.moving-background</comment>
            <translation>انظر وخلف العلامة مشهد متحرك</translation>
        </message>
        <message>
            <source>Look at the mark. It stays where it is. Soft stripes behind it move slowly. Your head stays still.</source>
            <comment>exercise.moving-background.how</comment>
            <translation>انظر إلى العلامة. تبقى في مكانها. تتحرك خلفها خطوط ناعمة ببطء. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Fingertip near and far</source>
            <comment>exercise.near-far</comment>
            <translation>طرف الإصبع قريبًا وبعيدًا</translation>
        </message>
        <message>
            <source>Hold one finger up at arm's length, just under the camera. Bring it slowly to 30 cm from your eyes, then back. Keep your eyes on the tip, your head still.</source>
            <comment>exercise.near-far.how</comment>
            <translation>ارفع إصبعًا واحدًا على بُعد ذراع، تحت الكاميرا مباشرة. قرّبه ببطء إلى نحو 30 سم من عينيك، ثم أبعده. تبقى عيناك على طرفه. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Hold your eyes on a near tip</source>
            <comment>exercise.near-hold</comment>
            <translation>ثبّت عينيك على طرف قريب</translation>
        </message>
        <message>
            <source>Hold one finger up where you see just one tip. Keep your eyes on it. Your head stays still.</source>
            <comment>exercise.near-hold.how</comment>
            <translation>ارفع إصبعًا حيث ترى طرفًا واحدًا فقط. أبقِ عينيك عليه. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Nod, eyes on the target</source>
            <comment>exercise.nods-on-target</comment>
            <translation>الرأس إلى أعلى وأسفل، والعينان على الهدف</translation>
        </message>
        <message>
            <source>Nod up and down, one nod a beat. Your eyes stay on the target.</source>
            <comment>exercise.nods-on-target.how</comment>
            <translation>حرّك رأسك إلى أعلى وأسفل، حركة واحدة مع كل نقرة. تبقى عيناك على الهدف.</translation>
        </message>
        <message>
            <source>Nod, head and eyes together</source>
            <comment>exercise.nods-together</comment>
            <translation>الرأس والعينان معًا إلى أعلى وأسفل</translation>
        </message>
        <message>
            <source>Look up with head and eyes, then look down. Move once a beat.</source>
            <comment>exercise.nods-together.how</comment>
            <translation>انظر إلى أعلى برأسك وعينيك، ثم انظر إلى أسفل. حركة واحدة مع كل نقرة.</translation>
        </message>
        <message>
            <source>Nod while the target moves</source>
            <comment>exercise.nods-x2</comment>
            <translation>الرأس إلى أعلى وأسفل والهدف يتحرك</translation>
        </message>
        <message>
            <source>Nod up while the target goes down, then the other way round. Your eyes stay on the target. Nod as far as the target goes, and no farther.</source>
            <comment>exercise.nods-x2.how</comment>
            <translation>حرّك رأسك إلى أعلى بينما ينزل الهدف، ثم بالعكس. تبقى عيناك على الهدف. حرّك رأسك بقدر ما يتحرك الهدف، لا أكثر.</translation>
        </message>
        <message>
            <source>Turn with a partner</source>
            <comment>exercise.partner-turns</comment>
            <translation>استدر مع شخص آخر</translation>
        </message>
        <message>
            <source>Turn to one side and take the ball from your partner. Turn to the other side and give it back.</source>
            <comment>exercise.partner-turns.how</comment>
            <translation>استدر إلى جانب وخذ الكرة من الشخص الآخر. استدر إلى الجانب الآخر وأعدها إليه.</translation>
        </message>
        <message>
            <source>Turn with your eyes shut</source>
            <comment>exercise.remembered-target</comment>
            <translation>أدر رأسك وعيناك مغمضتان</translation>
        </message>
        <message>
            <source>Look at the target. Shut your eyes and turn your head. Keep your eyes where the target was. Open them and see if you are right.</source>
            <comment>exercise.remembered-target.how</comment>
            <translation>انظر إلى الهدف. أغمض عينيك وأدر رأسك. أبقِ عينيك حيث كان الهدف. افتحهما وانظر هل أصبت.</translation>
        </message>
        <message>
            <source>Roll your shoulders back</source>
            <comment>exercise.shoulders-back</comment>
            <translation>أدر كتفيك إلى الخلف</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level. Keep both shoulders in the picture.</source>
            <comment>exercise.shoulders-back.how</comment>
            <translation>ارفع كتفيك، وأدرهما إلى الخلف، ثم دعهما ينزلان. تحرك ببطء. أبقِ رأسك مستقيمًا. أبقِ كتفيك في الصورة.</translation>
        </message>
        <message>
            <source>Roll your shoulders forward</source>
            <comment>exercise.shoulders-forward</comment>
            <translation>أدر كتفيك إلى الأمام</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head level. Keep both shoulders in the picture.</source>
            <comment>exercise.shoulders-forward.how</comment>
            <translation>ارفع كتفيك، وأدرهما إلى الأمام، ثم دعهما ينزلان. تحرك ببطء. أبقِ رأسك مستقيمًا. أبقِ كتفيك في الصورة.</translation>
        </message>
        <message>
            <source>Stand up and sit down</source>
            <comment>exercise.sit-to-stand</comment>
            <translation>قف ثم اجلس</translation>
        </message>
        <message>
            <source>Stand up from your chair, then sit down again. You may use your hands.</source>
            <comment>exercise.sit-to-stand.how</comment>
            <translation>قم عن الكرسي، ثم اجلس من جديد. يمكنك استخدام يديك.</translation>
        </message>
        <message>
            <source>Up and down the stairs</source>
            <comment>exercise.stairs</comment>
            <translation>اصعد الدرج وانزل</translation>
        </message>
        <message>
            <source>Go up one step and down again. Hold the rail. Your helper stays close. Count for yourself.</source>
            <comment>exercise.stairs.how</comment>
            <translation>اصعد درجة واحدة ثم انزل. أمسك الدرابزين. يبقى من يساعدك قريبًا منك. عُدّ بنفسك.</translation>
        </message>
        <message>
            <source>Stand in the corner</source>
            <comment>exercise.stand</comment>
            <translation>قف في الركن</translation>
        </message>
        <message>
            <source>Stand and turn your head</source>
            <comment>exercise.stand-head-shake</comment>
            <translation>قف وأدر رأسك</translation>
        </message>
        <message>
            <source>Stand with your feet as wide as your hips. Turn your head from side to side with the beat.</source>
            <comment>exercise.stand-head-shake.how</comment>
            <translation>قف وقدماك متباعدتان بعرض وركيك. أدر رأسك من جانب إلى جانب مع النقرات.</translation>
        </message>
        <message>
            <source>Stand on one leg</source>
            <comment>exercise.stand-one-leg</comment>
            <translation>قف على ساق واحدة</translation>
        </message>
        <message>
            <source>Lift one foot a little. Stand still and look at a mark on the wall, as high as your eyes. Then change legs.</source>
            <comment>exercise.stand-one-leg.how</comment>
            <translation>ارفع قدمًا قليلًا. قف ثابتًا وانظر إلى علامة على الجدار، بارتفاع عينيك. ثم بدّل الساق.</translation>
        </message>
        <message>
            <source>Stand heel to toe</source>
            <comment>exercise.stand-tandem</comment>
            <translation>قف والكعب أمام الأصابع</translation>
        </message>
        <message>
            <source>Put one foot right in front of the other. Stand still and look at a mark on the wall, as high as your eyes.</source>
            <comment>exercise.stand-tandem.how</comment>
            <translation>ضع قدمًا أمام الأخرى مباشرة. قف ثابتًا وانظر إلى علامة على الجدار، بارتفاع عينيك.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your shoulders. Let your arms hang. Chin up. Look at a mark on the wall, as high as your eyes.</source>
            <comment>exercise.stand.how</comment>
            <translation>قف وظهرك إلى الركن، وقدماك متباعدتان بعرض كتفيك. دع ذراعيك تتدليان. ارفع ذقنك. انظر إلى علامة على الجدار، بارتفاع عينيك.</translation>
        </message>
        <message>
            <source>Follow your thumb, head too</source>
            <comment>exercise.thumb-together</comment>
            <translation>اتبع إبهامك، والرأس معه</translation>
        </message>
        <message>
            <source>Hold your thumb out in front of you. Move it from side to side. Your head and eyes go with it.</source>
            <comment>exercise.thumb-together.how</comment>
            <translation>مُدّ إبهامك أمامك. حرّكه من جانب إلى جانب. يتبعه رأسك وعيناك.</translation>
        </message>
        <message>
            <source>Turn your head, eyes on the target</source>
            <comment>exercise.turns-on-target</comment>
            <translation>أدر رأسك، والعينان على الهدف</translation>
        </message>
        <message>
            <source>Turn your head from side to side, one turn a beat. Your eyes stay on the target.</source>
            <comment>exercise.turns-on-target.how</comment>
            <translation>أدر رأسك من جانب إلى جانب، حركة واحدة مع كل نقرة. تبقى عيناك على الهدف.</translation>
        </message>
        <message>
            <source>Turn head and eyes together</source>
            <comment>exercise.turns-together</comment>
            <translation>أدر الرأس والعينين معًا</translation>
        </message>
        <message>
            <source>Look to the right with head and eyes, then to the left. Move once a beat.</source>
            <comment>exercise.turns-together.how</comment>
            <translation>انظر إلى اليمين برأسك وعينيك، ثم إلى اليسار. حركة واحدة مع كل نقرة.</translation>
        </message>
        <message>
            <source>Head and target move apart</source>
            <comment>exercise.turns-x2</comment>
            <translation>الرأس والهدف يفترقان</translation>
        </message>
        <message>
            <source>Turn your head one way while the target goes the other way. Your eyes stay on the target. Turn as far as the target goes, and no farther.</source>
            <comment>exercise.turns-x2.how</comment>
            <translation>أدر رأسك إلى جهة بينما يذهب الهدف إلى الجهة الأخرى. تبقى عيناك على الهدف. أدر رأسك بقدر ما يتحرك الهدف، لا أكثر.</translation>
        </message>
        <message>
            <source>Walk forward and backward</source>
            <comment>exercise.walk</comment>
            <translation>امشِ إلى الأمام وإلى الخلف</translation>
        </message>
        <message>
            <source>Walk ten steps forward, then ten steps backward. Your helper walks with you. Count your own steps.</source>
            <comment>exercise.walk.how</comment>
            <translation>امشِ عشر خطوات إلى الأمام، ثم عشر خطوات إلى الخلف. يمشي معك من يساعدك. عُدّ خطواتك بنفسك.</translation>
        </message>
        <message>
            <source>Shift from foot to foot</source>
            <comment>exercise.weight-shift</comment>
            <translation>انقل وزنك من قدم إلى قدم</translation>
        </message>
        <message>
            <source>Stand tall. Put your weight on one foot, then on the other. Go slowly.</source>
            <comment>exercise.weight-shift.how</comment>
            <translation>قف مستقيمًا. ضع وزنك على قدم، ثم على الأخرى. تحرك ببطء.</translation>
        </message>
        <message>
            <source>Both</source>
            <comment>eyes.both</comment>
            <translation>العينان</translation>
        </message>
        <message>
            <source>My left</source>
            <comment>eyes.left</comment>
            <translation>اليسرى</translation>
        </message>
        <message>
            <source>My right</source>
            <comment>eyes.right</comment>
            <translation>اليمنى</translation>
        </message>
        <message>
            <source>Which eye shall be watched?</source>
            <comment>eyes.title</comment>
            <translation>أي عين تُراقَب؟</translation>
        </message>
        <message>
            <source>until it begins</source>
            <comment>far.begins</comment>
            <translation>حتى البداية</translation>
        </message>
        <message>
            <source>left</source>
            <comment>far.left</comment>
            <translation>باقٍ</translation>
        </message>
        <message>
            <source>left, {count} done</source>
            <comment>far.left_done</comment>
            <translation>باقٍ، تم {count}</translation>
        </message>
        <message>
            <source>of {goal}</source>
            <comment>far.of</comment>
            <translation>من {goal}</translation>
        </message>
        <message>
            <source>so far</source>
            <comment>far.so_far</comment>
            <translation>حتى الآن</translation>
        </message>
        <message>
            <source>Target with repetition count</source>
            <comment>field.name</comment>
            <translation>الهدف مع عدد المرات</translation>
        </message>
        <message>
            <source>{count} repetitions. Left {left}, right {right}, {tempo} beats a minute.</source>
            <comment>field.text</comment>
            <translation>عدد المرات {count}. اليسار {left}، اليمين {right}، {tempo} نقرة في الدقيقة.</translation>
        </message>
        <message>
            <source>{count} repetitions. Down {down}, up {up}, {tempo} beats a minute.</source>
            <comment>field.text_up</comment>
            <translation>عدد المرات {count}. الأسفل {down}، الأعلى {up}، {tempo} نقرة في الدقيقة.</translation>
        </message>
        <message>
            <source>Let it move (S)</source>
            <comment>figure.go</comment>
            <translation>تحريك (S)</translation>
        </message>
        <message>
            <source>Let the drawing move, key S</source>
            <comment>figure.go_name</comment>
            <translation>تحريك الرسم، المفتاح S</translation>
        </message>
        <message>
            <source>Hold still (S)</source>
            <comment>figure.hold</comment>
            <translation>تثبيت (S)</translation>
        </message>
        <message>
            <source>Hold the drawing still, key S</source>
            <comment>figure.hold_name</comment>
            <translation>تثبيت الرسم، المفتاح S</translation>
        </message>
        <message>
            <source>Drawings move again.</source>
            <comment>figure.moves</comment>
            <translation>الرسوم تتحرك من جديد.</translation>
        </message>
        <message>
            <source>It moves slowly, over and over again.</source>
            <comment>figure.moving</comment>
            <translation>يتحرك ببطء، مرة بعد مرة.</translation>
        </message>
        <message>
            <source>Drawing: {what}</source>
            <comment>figure.name</comment>
            <translation>رسم: {what}</translation>
        </message>
        <message>
            <source>It does not move.</source>
            <comment>figure.still</comment>
            <translation>لا يتحرك.</translation>
        </message>
        <message>
            <source>Drawings hold still now.</source>
            <comment>figure.stills</comment>
            <translation>الرسوم ثابتة الآن.</translation>
        </message>
        <message>
            <source>From above</source>
            <comment>figure.view.above</comment>
            <translation>من الأعلى</translation>
        </message>
        <message>
            <source>From the front</source>
            <comment>figure.view.body_front</comment>
            <translation>من الأمام</translation>
        </message>
        <message>
            <source>As in a mirror</source>
            <comment>figure.view.front</comment>
            <translation>كما في المرآة</translation>
        </message>
        <message>
            <source>From the side</source>
            <comment>figure.view.side</comment>
            <translation>من الجانب</translation>
        </message>
        <message>
            <source>Your face can not be seen well while it moves. The numbers may be rough.</source>
            <comment>finding.coarse_picture</comment>
            <translation>لا يظهر وجهك جيدًا وهو يتحرّك. قد تكون الأرقام تقريبية.</translation>
        </message>
        <message>
            <source>Your eyes could not be followed well enough. Your head is measured, your gaze is not.</source>
            <comment>finding.gaze_not_fitted</comment>
            <translation>لم يمكن تتبع عينيك جيدًا بما يكفي. يُقاس رأسك، ولا يُقاس اتجاه نظرك.</translation>
        </message>
        <message>
            <source>The set-up has a weakness ({key}). Numbers may be rough.</source>
            <comment>finding.other</comment>
            <translation>في الإعداد نقطة ضعف ({key}). قد تكون الأرقام تقريبية.</translation>
        </message>
        <message>
            <source>Repeat the set-up with more light if you can.</source>
            <comment>finding.repeat_hint</comment>
            <translation>أعد الإعداد مع ضوء أكثر إن استطعت.</translation>
        </message>
        <message>
            <source>What Turnpost does, and what it does not</source>
            <comment>first.about</comment>
            <translation>ما يفعله Turnpost وما لا يفعله</translation>
        </message>
        <message>
            <source>It watches your head and eyes through the camera while you do the exercises that your therapist has given you. It counts, keeps the beat, and says when something is off.</source>
            <comment>first.about.does</comment>
            <translation>يتابع رأسك وعينيك عبر الكاميرا وأنت تؤدي التمارين التي أعطاك إياها معالجك. يعدّ، ويحفظ الإيقاع، ويقول عندما لا يسير شيء كما يجب.</translation>
        </message>
        <message>
            <source>It does not find out what you have, and it does not choose or change your treatment. It can't hold you, and it calls nobody.</source>
            <comment>first.about.not</comment>
            <translation>لا يكتشف ما بك، ولا يختار علاجك ولا يغيره. لا يستطيع أن يمسك بك، ولا يتصل بأحد.</translation>
        </message>
        <message>
            <source>At the end you get a summary that you can hand to your therapist.</source>
            <comment>first.about.saves</comment>
            <translation>في النهاية تحصل على ملخص يمكنك أن تسلمه لمعالجك.</translation>
        </message>
        <message>
            <source>One step back</source>
            <comment>first.before</comment>
            <translation>خطوة إلى الوراء</translation>
        </message>
        <message>
            <source>Camera, light and glasses</source>
            <comment>first.camera</comment>
            <translation>الكاميرا والضوء والنظارة</translation>
        </message>
        <message>
            <source>Finish</source>
            <comment>first.finish</comment>
            <translation>إنهاء</translation>
        </message>
        <message>
            <source>Skip the rest</source>
            <comment>first.leave</comment>
            <translation>تخطي الباقي</translation>
        </message>
        <message>
            <source>Skip the rest; you find these steps again under “Camera, screen, more”</source>
            <comment>first.leave_name</comment>
            <translation>تخطي الباقي؛ تجد هذه الخطوات من جديد تحت «الكاميرا والشاشة وغيرهما»</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>first.next</comment>
            <translation>متابعة</translation>
        </message>
        <message>
            <source>First steps</source>
            <comment>first.open</comment>
            <translation>الخطوات الأولى</translation>
        </message>
        <message>
            <source>The first steps</source>
            <comment>first.overview</comment>
            <translation>الخطوات الأولى</translation>
        </message>
        <message>
            <source>Take any of them again, in any order. Nothing you did is lost.</source>
            <comment>first.overview.how</comment>
            <translation>كرر أيًا منها، بأي ترتيب. لا يضيع شيء مما فعلته.</translation>
        </message>
        <message>
            <source>What stays with you</source>
            <comment>first.privacy</comment>
            <translation>ما يبقى عندك</translation>
        </message>
        <message>
            <source>At the top left you always see whether the camera is on.</source>
            <comment>first.privacy.mark</comment>
            <translation>في أعلى اليمين ترى دائمًا هل الكاميرا تعمل.</translation>
        </message>
        <message>
            <source>Step {at} of {of}</source>
            <comment>first.progress</comment>
            <translation>الخطوة {at} من {of}</translation>
        </message>
        <message>
            <source>Your place for sitting</source>
            <comment>first.sitting</comment>
            <translation>مكانك للجلوس</translation>
        </message>
        <message>
            <source>A firm chair with a back and no wheels, both feet on the floor.</source>
            <comment>first.sitting.chair</comment>
            <translation>كرسي ثابت له ظهر وبلا عجلات، والقدمان على الأرض.</translation>
        </message>
        <message>
            <source>A lamp or a window in front of you, not behind you.</source>
            <comment>first.sitting.light</comment>
            <translation>مصباح أو نافذة أمامك، لا خلفك.</translation>
        </message>
        <message>
            <source>The screen straight ahead at arm's length, its camera about as high as your eyes. A few books under the laptop help.</source>
            <comment>first.sitting.screen</comment>
            <translation>الشاشة أمامك مباشرة على بعد ذراع، والكاميرا بارتفاع عينيك تقريبًا. وضع بعض الكتب تحت الحاسوب المحمول يساعد.</translation>
        </message>
        <message>
            <source>Sound and voice</source>
            <comment>first.sound</comment>
            <translation>الصوت والكلام</translation>
        </message>
        <message>
            <source>Your place for standing</source>
            <comment>first.standing</comment>
            <translation>مكانك للوقوف</translation>
        </message>
        <message>
            <source>A corner of the room behind you. A heavy chair without wheels in front of you, so near that you can hold its back.</source>
            <comment>first.standing.corner</comment>
            <translation>ركن من الغرفة خلفك. وكرسي ثقيل بلا عجلات أمامك، قريب بحيث تستطيع أن تمسك ظهره.</translation>
        </message>
        <message>
            <source>Where your plan asks for a helper, never stand without one.</source>
            <comment>first.standing.helper</comment>
            <translation>حيث تطلب خطتك شخصًا يساعدك، لا تقف أبدًا من دونه.</translation>
        </message>
        <message>
            <source>The laptop on something high and firm, out of your reach, its cable where nobody trips.</source>
            <comment>first.standing.laptop</comment>
            <translation>الحاسوب المحمول على شيء مرتفع وثابت، خارج متناول يدك، وسلكه حيث لا يتعثر به أحد.</translation>
        </message>
        <message>
            <source>You need it only if your plan has exercises for standing.</source>
            <comment>first.standing.only</comment>
            <translation>تحتاج إليه فقط إذا كان في خطتك تمارين للوقوف.</translation>
        </message>
        <message>
            <source>When to stop, and when to get help</source>
            <comment>first.stop</comment>
            <translation>متى تتوقف، ومتى تطلب المساعدة</translation>
        </message>
        <message>
            <source>Can you read this with ease?</source>
            <comment>first.text</comment>
            <translation>هل تقرأ هذا بسهولة؟</translation>
        </message>
        <message>
            <source>Colours</source>
            <comment>first.text.colours</comment>
            <translation>الألوان</translation>
        </message>
        <message>
            <source>Dark</source>
            <comment>first.text.dark</comment>
            <translation>داكن</translation>
        </message>
        <message>
            <source>Sit as you will when you practise, and choose. The buttons at the top right do the same at any time.</source>
            <comment>first.text.how</comment>
            <translation>اجلس كما ستجلس عند التمرين، واختر. الأزرار في أعلى اليسار تفعل الشيء نفسه في أي وقت.</translation>
        </message>
        <message>
            <source>Language</source>
            <comment>first.text.language</comment>
            <translation>اللغة</translation>
        </message>
        <message>
            <source>Light</source>
            <comment>first.text.light</comment>
            <translation>فاتح</translation>
        </message>
        <message>
            <source>Drawings of the exercises</source>
            <comment>first.text.motion</comment>
            <translation>رسوم التمارين</translation>
        </message>
        <message>
            <source>Move slowly</source>
            <comment>first.text.moving</comment>
            <translation>تتحرك ببطء</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <comment>first.text.percent</comment>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <comment>first.text.size</comment>
            <translation>حجم النص</translation>
        </message>
        <message>
            <source>Hold still</source>
            <comment>first.text.still</comment>
            <translation>ثابتة</translation>
        </message>
        <message>
            <source>No clinician who speaks this language has checked these words yet.</source>
            <comment>first.text.unchecked</comment>
            <translation>لم يراجع هذه النصوص بعدُ مختص سريري يتكلم العربية.</translation>
        </message>
        <message>
            <source>Half a minute to try it</source>
            <comment>first.try</comment>
            <translation>نصف دقيقة للتجربة</translation>
        </message>
        <message>
            <source>Try it now</source>
            <comment>first.try.begin</comment>
            <translation>جرّب الآن</translation>
        </message>
        <message>
            <source>Leave it out if you were not told that you may turn your head.</source>
            <comment>first.try.care</comment>
            <translation>اترك هذا إذا لم يُقل لك إنه يجوز لك أن تدير رأسك.</translation>
        </message>
        <message>
            <source>A few questions about today come first. Then the camera gets to know you, which takes about a minute. Then you turn your head gently for half a minute.</source>
            <comment>first.try.how</comment>
            <translation>تأتي أولًا بعض الأسئلة عن اليوم. ثم تتعرف عليك الكاميرا، ويستغرق ذلك نحو دقيقة. ثم تدير رأسك برفق نصف دقيقة.</translation>
        </message>
        <message>
            <source>Your plan lets the head turn only a little, too little for this try. Leave it out, and ask your therapist how you begin.</source>
            <comment>first.try.none</comment>
            <translation>خطتك تسمح بإدارة الرأس قليلًا فقط، وهذا لا يكفي لهذه التجربة. اتركها، واسأل معالجك كيف تبدأ.</translation>
        </message>
        <message>
            <source>Is any of this new since last time?</source>
            <comment>gate.ask</comment>
            <translation>هل ظهر شيء من هذا منذ آخر مرة؟</translation>
        </message>
        <message>
            <source>Did any of this start or happen not long ago?</source>
            <comment>gate.ask_first</comment>
            <translation>هل بدأ شيء من هذا أو حدث منذ وقت قريب فقط؟</translation>
        </message>
        <message>
            <source>Is any of this new just now?</source>
            <comment>gate.ask_unwell</comment>
            <translation>هل ظهر شيء من هذا الآن؟</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>gate.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>You blacked out</source>
            <comment>gate.blackout</comment>
            <translation>فقدت الوعي</translation>
        </message>
        <message>
            <source>You can't stand or walk</source>
            <comment>gate.cannot_stand</comment>
            <translation>لا تستطيع الوقوف أو المشي</translation>
        </message>
        <message>
            <source>Pain in your chest</source>
            <comment>gate.chest_pain</comment>
            <translation>ألم في صدرك</translation>
        </message>
        <message>
            <source>Seeing double</source>
            <comment>gate.double_vision</comment>
            <translation>ترى الشيء شيئين</translation>
        </message>
        <message>
            <source>You had a fall</source>
            <comment>gate.fall</comment>
            <translation>سقطت</translation>
        </message>
        <message>
            <source>You suddenly hear less</source>
            <comment>gate.hearing_loss</comment>
            <translation>صرت فجأة تسمع أقل</translation>
        </message>
        <message>
            <source>Mark what is new. If nothing is, press “None of these”.</source>
            <comment>gate.how</comment>
            <translation>ضع علامة على ما هو جديد. وإذا لم يكن شيء جديدًا، فاضغط «لا شيء من هذا».</translation>
        </message>
        <message>
            <source>Your neck hurts</source>
            <comment>gate.neck_pain</comment>
            <translation>رقبتك تؤلمك</translation>
        </message>
        <message>
            <source>None of these</source>
            <comment>gate.none</comment>
            <translation>لا شيء من هذا</translation>
        </message>
        <message>
            <source>Do not practise today. Call your therapist first.</source>
            <comment>gate.outcome.call_therapist</comment>
            <translation>لا تتمرن اليوم. اتصل بمعالجك أولًا.</translation>
        </message>
        <message>
            <source>Call for emergency help now: {number}. Do not practise today.</source>
            <comment>gate.outcome.emergency</comment>
            <translation>اتصل بالطوارئ الآن: {number}. لا تتمرن اليوم.</translation>
        </message>
        <message>
            <source>Call for emergency help now. Do not practise today.</source>
            <comment>gate.outcome.emergency_no_number</comment>
            <translation>اتصل بالطوارئ الآن. لا تتمرن اليوم.</translation>
        </message>
        <message>
            <source>For now you practise sitting down.</source>
            <comment>gate.outcome.seated_only</comment>
            <translation>تتمرن الآن وأنت جالس.</translation>
        </message>
        <message>
            <source>Hold on and sit still until it stops. That is all for today. Your therapist sees this first when you hand over your sessions.</source>
            <comment>gate.outcome.sit_and_stop</comment>
            <translation>أمسك بشيء واجلس ثابتًا حتى يتوقف. هذا كل شيء لليوم. سيرى معالجك هذا أولًا عندما تسلّم جلساتك.</translation>
        </message>
        <message>
            <source>A short spin when you bend, look up or tilt your head</source>
            <comment>gate.positional_spin</comment>
            <translation>دوران قصير عندما تنحني أو تنظر إلى أعلى أو تميل رأسك</translation>
        </message>
        <message>
            <source>A sudden bad headache</source>
            <comment>gate.severe_headache</comment>
            <translation>صداع شديد مفاجئ</translation>
        </message>
        <message>
            <source>Trouble with speech</source>
            <comment>gate.slurred_speech</comment>
            <translation>صعوبة في الكلام</translation>
        </message>
        <message>
            <source>Yes, what I marked</source>
            <comment>gate.some</comment>
            <translation>نعم، ما وضعت عليه علامة</translation>
        </message>
        <message>
            <source>Your arm tingles</source>
            <comment>gate.tingling_arm</comment>
            <translation>وخز في ذراعك</translation>
        </message>
        <message>
            <source>A dizzy spell not like the usual ones</source>
            <comment>gate.unlike_usual</comment>
            <translation>نوبة دوخة لا تشبه المعتاد</translation>
        </message>
        <message>
            <source>A weak or numb face, arm or leg</source>
            <comment>gate.weak_or_numb</comment>
            <translation>ضعف أو خدر في الوجه أو الذراع أو الساق</translation>
        </message>
        <message>
            <source>None</source>
            <comment>glasses.none</comment>
            <translation>لا شيء</translation>
        </message>
        <message>
            <source>One strength</source>
            <comment>glasses.single</comment>
            <translation>بقوة واحدة</translation>
        </message>
        <message>
            <source>Which glasses do you wear now?</source>
            <comment>glasses.title</comment>
            <translation>أي نظارة تلبس الآن؟</translation>
        </message>
        <message>
            <source>Bi- or varifocal</source>
            <comment>glasses.varifocal</comment>
            <translation>ثنائية أو متعددة البؤر</translation>
        </message>
        <message>
            <source>Nothing is measured here. Please count for yourself.</source>
            <comment>guide.count</comment>
            <translation>لا يُقاس شيء هنا. من فضلك عُدّ بنفسك.</translation>
        </message>
        <message>
            <source>That was all of it. Stand still, or sit down. Your helper presses “Done”.</source>
            <comment>guide.over</comment>
            <translation>انتهى كل شيء. قف ساكنًا أو اجلس. يضغط مساعدك على «تم».</translation>
        </message>
        <message>
            <source>Turn slowly to the other side and give the ball back.</source>
            <comment>guide.partner.give</comment>
            <translation>استدر ببطء إلى الجانب الآخر وأعد الكرة.</translation>
        </message>
        <message>
            <source>First stand still. Your partner is close to you, with the ball.</source>
            <comment>guide.partner.stand</comment>
            <translation>قف أولًا ساكنًا. شريكك قريب منك ومعه الكرة.</translation>
        </message>
        <message>
            <source>When you are ready, turn slowly to one side and take the ball.</source>
            <comment>guide.partner.take</comment>
            <translation>عندما تكون مستعدًا، استدر ببطء إلى أحد الجانبين وخذ الكرة.</translation>
        </message>
        <message>
            <source>Your helper stays one step below you. When you are steady, go down again. Your hand stays on the rail.</source>
            <comment>guide.stairs.down</comment>
            <translation>يبقى مساعدك أسفل منك بدرجة. عندما تثبت، انزل مرة أخرى. تبقى يدك على الدرابزين.</translation>
        </message>
        <message>
            <source>Stand before the step, your hand on the rail. Your helper stands close behind you.</source>
            <comment>guide.stairs.stand</comment>
            <translation>قف أمام الدرجة ويدك على الدرابزين. مساعدك خلفك مباشرة.</translation>
        </message>
        <message>
            <source>Your helper stays close behind you. When you are ready, go up one step, one foot after the other.</source>
            <comment>guide.stairs.up</comment>
            <translation>يبقى مساعدك خلفك مباشرة. عندما تكون مستعدًا، اصعد درجة واحدة، قدمًا بعد الأخرى.</translation>
        </message>
        <message>
            <source>To stop, say stop and hold on. Your helper stays and helps you sit down. The Escape key can wait.</source>
            <comment>guide.stop</comment>
            <translation>للتوقف قل قف وتمسّك بشيء. يبقى مساعدك معك ويساعدك على الجلوس. يمكن لمفتاح Esc أن ينتظر.</translation>
        </message>
        <message>
            <source>Your helper goes behind you. When you are ready, walk ten steps backward. Take your time.</source>
            <comment>guide.walk.back</comment>
            <translation>يقف مساعدك خلفك. عندما تكون مستعدًا، امشِ عشر خطوات إلى الخلف. خذ وقتك.</translation>
        </message>
        <message>
            <source>When you are ready, walk ten steps forward. Take your time.</source>
            <comment>guide.walk.forward</comment>
            <translation>عندما تكون مستعدًا، امشِ عشر خطوات إلى الأمام. خذ وقتك.</translation>
        </message>
        <message>
            <source>After the tenth step stop, and stand until all is steady.</source>
            <comment>guide.walk.halt</comment>
            <translation>بعد الخطوة العاشرة توقف، وابقَ واقفًا حتى يهدأ كل شيء.</translation>
        </message>
        <message>
            <source>First stand still. Your helper is at your side.</source>
            <comment>guide.walk.stand</comment>
            <translation>قف أولًا ساكنًا. مساعدك إلى جانبك.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>handover.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>Not in the file, because they broke off: {count}. Close Turnpost and open it again to save them.</source>
            <comment>handover.broken_off</comment>
            <translation>ليست في الملف لأنها انقطعت: {count}. أغلق Turnpost وافتحه من جديد لحفظها.</translation>
        </message>
        <message>
            <source>Not in the file, because you saved them in a folder of your own: {count}. Bring that folder to your therapist.</source>
            <comment>handover.elsewhere</comment>
            <translation>ليست في الملف لأنك حفظتها في مجلد خاص بك: {count}. خذ ذلك المجلد إلى معالجك.</translation>
        </message>
        <message>
            <source>That did not work: {why}</source>
            <comment>handover.failed</comment>
            <translation>لم ينجح ذلك: {why}</translation>
        </message>
        <message>
            <source>There are sessions of other plans, of which this clinic has nothing yet: {plans}. They stay here unless you say that they are yours and meant for this clinic.</source>
            <comment>handover.foreign</comment>
            <translation>هناك جلسات من خطط أخرى لم تستلم هذه العيادة منها شيئًا بعد: {plans}. تبقى هنا ما لم تقل إنها لك ولهذه العيادة.</translation>
        </message>
        <message>
            <source>Mine: take them, too</source>
            <comment>handover.foreign.take</comment>
            <translation>إنها لي: خذها أيضًا</translation>
        </message>
        <message>
            <source>Names of files are not shown in a call. Leave the call's layout (F4) first.</source>
            <comment>handover.in_call</comment>
            <translation>لا تُعرض أسماء الملفات في مكالمة. اخرج أولًا من عرض المكالمة (F4).</translation>
        </message>
        <message>
            <source>Turnpost puts them into one file. In it are your answers and what was measured. There is no picture in it, nor the shape of your face, nor your name.</source>
            <comment>handover.inside</comment>
            <translation>يضعها Turnpost في ملف واحد. فيه إجاباتك وما قيس. ليس فيه صورة، ولا شكل وجهك، ولا اسمك.</translation>
        </message>
        <message>
            <source>Files for the clinic (*.age *.turnpost)</source>
            <comment>handover.kinds</comment>
            <translation>ملفات للعيادة (*.age *.turnpost)</translation>
        </message>
        <message>
            <source>The file is locked: only your clinic can open it.</source>
            <comment>handover.locked</comment>
            <translation>الملف مقفل: عيادتك وحدها تستطيع فتحه.</translation>
        </message>
        <message>
            <source>Looking at what you have practised ...</source>
            <comment>handover.looking</comment>
            <translation>يجري النظر فيما تمرنت عليه ...</translation>
        </message>
        <message>
            <source>The file is made. Sessions in it: {count}. It is here: {path}</source>
            <comment>handover.made</comment>
            <translation>صُنع الملف. عدد الجلسات فيه: {count}. هو هنا: {path}</translation>
        </message>
        <message>
            <source>Make one with all {count}</source>
            <comment>handover.make_all</comment>
            <translation>صنع ملف فيه الكل: {count}</translation>
        </message>
        <message>
            <source>Make the file</source>
            <comment>handover.make_new</comment>
            <translation>صنع الملف</translation>
        </message>
        <message>
            <source>Making the file ...</source>
            <comment>handover.making</comment>
            <translation>يجري صنع الملف ...</translation>
        </message>
        <message>
            <source>Not all went into one file. Send these, too: {names}</source>
            <comment>handover.more</comment>
            <translation>لم يتسع ملف واحد لكل شيء. أرسل هذه أيضًا: {names}</translation>
        </message>
        <message>
            <source>Sessions waiting to be handed over: {count}.</source>
            <comment>handover.new</comment>
            <translation>الجلسات المنتظر تسليمها: {count}.</translation>
        </message>
        <message>
            <source>You have handed over all you practised with this plan. If a file was lost, you can make one with everything again.</source>
            <comment>handover.no_new</comment>
            <translation>سلّمت كل ما تمرنت عليه بهذه الخطة. إذا ضاع ملف، فيمكنك أن تصنع ملفًا فيه كل شيء من جديد.</translation>
        </message>
        <message>
            <source>You have no plan from your therapist open. Open it on the first page, then come back.</source>
            <comment>handover.no_plan</comment>
            <translation>ليست عندك خطة مفتوحة من معالجك. افتحها في الصفحة الأولى، ثم عُد.</translation>
        </message>
        <message>
            <source>Your plan does not name a clinic that can receive files. Ask your therapist for a plan with the clinic's key in it.</source>
            <comment>handover.no_way</comment>
            <translation>لا تذكر خطتك عيادة تستطيع استلام الملفات. اطلب من معالجك خطة فيها مفتاح العيادة.</translation>
        </message>
        <message>
            <source>There is nothing to hand over yet. Practise once, then come back.</source>
            <comment>handover.none</comment>
            <translation>لا شيء لتسليمه بعد. تمرّن مرة، ثم عُد.</translation>
        </message>
        <message>
            <source>One session waits to be handed over.</source>
            <comment>handover.one_new</comment>
            <translation>جلسة واحدة تنتظر التسليم.</translation>
        </message>
        <message>
            <source>Hand over to my therapist</source>
            <comment>handover.open</comment>
            <translation>التسليم لمعالجي</translation>
        </message>
        <message>
            <source>Your clinic has chosen files without a lock. Whoever gets hold of this file can read it, so give it to your therapist by hand if you can.</source>
            <comment>handover.plain</comment>
            <translation>اختارت عيادتك ملفات بلا قفل. كل من يحصل على هذا الملف يستطيع قراءته، لذلك سلّمه لمعالجك باليد إن استطعت.</translation>
        </message>
        <message>
            <source>Now send it to your therapist: attach it to an e-mail, or bring it along on a memory stick.</source>
            <comment>handover.send</comment>
            <translation>أرسله الآن إلى معالجك: أرفقه برسالة بريد، أو أحضره على ذاكرة محمولة.</translation>
        </message>
        <message>
            <source>Sessions whose curves stayed behind, too large or not readable: {count}.</source>
            <comment>handover.thin</comment>
            <translation>جلسات بقيت منحنياتها هنا لأنها كبيرة جدًا أو لا تُقرأ: {count}.</translation>
        </message>
        <message>
            <source>Hand over to your therapist</source>
            <comment>handover.title</comment>
            <translation>التسليم لمعالجك</translation>
        </message>
        <message>
            <source>You have not compared the words of your plan yet. Do it first: then you know that the file goes to your clinic.</source>
            <comment>handover.unchecked</comment>
            <translation>لم تقارن كلمات خطتك بعد. افعل ذلك أولًا: عندئذ تعرف أن الملف يذهب إلى عيادتك.</translation>
        </message>
        <message>
            <source>Left out, because they can't be read: {count}. Tell your therapist.</source>
            <comment>handover.unread</comment>
            <translation>لم تُضَف لأنها لا تُقرأ: {count}. أخبر معالجك.</translation>
        </message>
        <message>
            <source>Not in the file, because they were practised as another person or without a plan: {count}.</source>
            <comment>handover.unsent</comment>
            <translation>ليست في الملف لأنها أُجريت باسم شخص آخر أو بلا خطة: {count}.</translation>
        </message>
        <message>
            <source>Where to put the file</source>
            <comment>handover.where</comment>
            <translation>أين يوضع الملف</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>help.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>In the whole program</source>
            <comment>help.group.always</comment>
            <translation>في البرنامج كله</translation>
        </message>
        <message>
            <source>In the layout for a call, between two sets: for your therapist</source>
            <comment>help.group.call</comment>
            <translation>في عرض المكالمة، بين مجموعتين: لمعالجك</translation>
        </message>
        <message>
            <source>To get about on a page</source>
            <comment>help.group.page</comment>
            <translation>للتنقل في الصفحة</translation>
        </message>
        <message>
            <source>Where you can see yourself</source>
            <comment>help.group.picture</comment>
            <translation>حيث يمكنك رؤية صورتك</translation>
        </message>
        <message>
            <source>While a set goes on</source>
            <comment>help.group.set</comment>
            <translation>أثناء المجموعة</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <comment>help.key.colours</comment>
            <translation>فاتح أو داكن</translation>
        </message>
        <message>
            <source>I see double: stop (with a fingertip near your eyes)</source>
            <comment>help.key.double</comment>
            <translation>أرى شيئين: توقف (وطرف الإصبع قريب من عينيك)</translation>
        </message>
        <message>
            <source>Read on below</source>
            <comment>help.key.down</comment>
            <translation>متابعة القراءة في الأسفل</translation>
        </message>
        <message>
            <source>Faster</source>
            <comment>help.key.faster</comment>
            <translation>أسرع</translation>
        </message>
        <message>
            <source>Full screen, and back</source>
            <comment>help.key.full_screen</comment>
            <translation>ملء الشاشة، والعودة منه</translation>
        </message>
        <message>
            <source>This page, and back</source>
            <comment>help.key.help</comment>
            <translation>هذه الصفحة، والعودة منها</translation>
        </message>
        <message>
            <source>Larger movement</source>
            <comment>help.key.larger</comment>
            <translation>حركة أكبر</translation>
        </message>
        <message>
            <source>Mark this moment for your therapist (in a session)</source>
            <comment>help.key.mark</comment>
            <translation>وضع علامة على هذه اللحظة لمعالجك (أثناء الجلسة)</translation>
        </message>
        <message>
            <source>To the next button</source>
            <comment>help.key.next</comment>
            <translation>إلى الزر التالي</translation>
        </message>
        <message>
            <source>Another exercise first</source>
            <comment>help.key.other_next</comment>
            <translation>تمرين آخر أولًا</translation>
        </message>
        <message>
            <source>Pause, and go on</source>
            <comment>help.key.pause</comment>
            <translation>إيقاف مؤقت، ثم متابعة</translation>
        </message>
        <message>
            <source>Show or hide your picture</source>
            <comment>help.key.picture</comment>
            <translation>إظهار صورتك أو إخفاؤها</translation>
        </message>
        <message>
            <source>Press the button that has the ring</source>
            <comment>help.key.press</comment>
            <translation>ضغط الزر المحاط بإطار</translation>
        </message>
        <message>
            <source>End Turnpost; what was done is saved</source>
            <comment>help.key.quit</comment>
            <translation>إنهاء Turnpost؛ ويُحفظ ما أُنجز</translation>
        </message>
        <message>
            <source>Layout for a video call, and back (not in the set-up)</source>
            <comment>help.key.share</comment>
            <translation>عرض لمكالمة الفيديو، والعودة منه (ليس أثناء الإعداد)</translation>
        </message>
        <message>
            <source>Slower</source>
            <comment>help.key.slower</comment>
            <translation>أبطأ</translation>
        </message>
        <message>
            <source>Smaller movement</source>
            <comment>help.key.smaller</comment>
            <translation>حركة أصغر</translation>
        </message>
        <message>
            <source>Sound: voice, beats or none</source>
            <comment>help.key.sound</comment>
            <translation>الصوت: كلام أو نقرات أو لا شيء</translation>
        </message>
        <message>
            <source>Hold drawings still, or let them move</source>
            <comment>help.key.still</comment>
            <translation>تثبيت الرسوم، أو تركها تتحرك</translation>
        </message>
        <message>
            <source>Stop at once, or leave the page</source>
            <comment>help.key.stop</comment>
            <translation>التوقف فورًا، أو مغادرة الصفحة</translation>
        </message>
        <message>
            <source>Take the change back</source>
            <comment>help.key.take_back</comment>
            <translation>التراجع عن التغيير</translation>
        </message>
        <message>
            <source>Larger text</source>
            <comment>help.key.text_larger</comment>
            <translation>نص أكبر</translation>
        </message>
        <message>
            <source>Text in its usual size</source>
            <comment>help.key.text_normal</comment>
            <translation>النص بحجمه المعتاد</translation>
        </message>
        <message>
            <source>Smaller text</source>
            <comment>help.key.text_smaller</comment>
            <translation>نص أصغر</translation>
        </message>
        <message>
            <source>I feel unwell (at any time)</source>
            <comment>help.key.unwell</comment>
            <translation>أشعر بسوء (في أي وقت)</translation>
        </message>
        <message>
            <source>Back up</source>
            <comment>help.key.up</comment>
            <translation>العودة إلى الأعلى</translation>
        </message>
        <message>
            <source>Ctrl</source>
            <comment>help.name.Ctrl</comment>
            <translation>Ctrl</translation>
        </message>
        <message>
            <source>Enter</source>
            <comment>help.name.Enter</comment>
            <translation>Enter</translation>
        </message>
        <message>
            <source>Page Down</source>
            <comment>help.name.PgDown</comment>
            <translation>Page Down</translation>
        </message>
        <message>
            <source>Page Up</source>
            <comment>help.name.PgUp</comment>
            <translation>Page Up</translation>
        </message>
        <message>
            <source>Space</source>
            <comment>help.name.Space</comment>
            <translation>المسافة</translation>
        </message>
        <message>
            <source>F1, Ctrl+M and the text size do nothing while a set or the set-up goes on. Between two sets, Esc asks first if that is all for today, and does nothing for two seconds after a page has come by itself.</source>
            <comment>help.note.always</comment>
            <translation>لا يعمل المفتاحان F1 وCtrl+M ولا تغيير حجم النص أثناء المجموعة أو الإعداد. وبين مجموعتين يسأل Esc أولًا إن كان هذا كل شيء لليوم، ولا يفعل شيئًا لمدة ثانيتين بعد ظهور صفحة من تلقاء نفسها.</translation>
        </message>
        <message>
            <source>Where something moves behind the target, any key stops the set.</source>
            <comment>help.note.set</comment>
            <translation>عندما يتحرك شيء خلف الهدف، يوقف أي مفتاح المجموعة.</translation>
        </message>
        <message>
            <source>Keys and help (F1)</source>
            <comment>help.open</comment>
            <translation>المفاتيح والمساعدة (F1)</translation>
        </message>
        <message>
            <source>How to give a score</source>
            <comment>help.scores</comment>
            <translation>كيف تعطي درجة</translation>
        </message>
        <message>
            <source>Then press Enter.</source>
            <comment>help.scores.enter</comment>
            <translation>ثم اضغط مفتاح الإدخال (Enter).</translation>
        </message>
        <message>
            <source>Keys and help</source>
            <comment>help.title</comment>
            <translation>المفاتيح والمساعدة</translation>
        </message>
        <message>
            <source>If you feel unwell</source>
            <comment>help.unwell</comment>
            <translation>إذا شعرت بسوء</translation>
        </message>
        <message>
            <source>Press Esc: what goes on stops at once. While you practise or just after, press U instead: everything stops, and a few questions follow. Sit down, or hold on to something firm.</source>
            <comment>help.unwell.how</comment>
            <translation>اضغط Esc: يتوقف ما يجري فورًا. وأثناء التدرب أو بعده مباشرة اضغط U بدلًا منه: يتوقف كل شيء وتليه بضعة أسئلة. اجلس، أو تمسّك بشيء ثابت.</translation>
        </message>
        <message>
            <source>Stand tall. Lean slowly to your toes, then to your heels. Bend at the ankles, not at the hips. Keep your eyes shut.</source>
            <comment>how.ankle-sway.closed</comment>
            <translation>قف مستقيمًا. مِل ببطء نحو أصابع قدميك، ثم نحو كعبيك. اثنِ كاحليك لا وركيك. أبقِ عينيك مغمضتين.</translation>
        </message>
        <message>
            <source>Cross your arms. Stand up and sit down as often as is safe, until the time is up.</source>
            <comment>how.chair-stands-30-s.paper</comment>
            <translation>اشبك ذراعيك على صدرك. قف واجلس بقدر ما هو آمن، حتى ينتهي الوقت.</translation>
        </message>
        <message>
            <source>Look from one note to the other, once a beat. Your head stays still.</source>
            <comment>how.eyes-side-to-side.wall</comment>
            <translation>انظر من ورقة إلى الأخرى، مرة مع كل نقرة. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Look at one note with your eyes. Then turn your head to it. Now look at the other note, and turn again.</source>
            <comment>how.eyes-then-head.wall</comment>
            <translation>انظر إلى ورقة بعينيك. ثم أدر رأسك إليها. انظر الآن إلى الورقة الأخرى، وأدر رأسك من جديد.</translation>
        </message>
        <message>
            <source>Look from the upper note to the lower one and back, once a beat. Your head stays still.</source>
            <comment>how.eyes-up-down.wall</comment>
            <translation>انظر من الورقة العليا إلى السفلى ثم عد، مرة مع كل نقرة. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Toss a soft ball or rolled sock from hand to hand, just above your eyes. Let your eyes and head go with it. If it drops, let it lie and take a new one.</source>
            <comment>how.hand-toss.paper</comment>
            <translation>ارمِ كرة لينة أو جوربًا ملفوفًا من يد إلى يد، فوق عينيك بقليل. دع عينيك ورأسك يتبعانها. إذا سقطت فاتركها وخذ غيرها.</translation>
        </message>
        <message>
            <source>Hold one finger up at arm's length. Bring it slowly to about 30 cm from your eyes, then back out. Your eyes stay on the tip. Your head stays still.</source>
            <comment>how.near-far.paper</comment>
            <translation>ارفع إصبعًا واحدًا على بُعد ذراع. قرّبه ببطء إلى نحو 30 سم من عينيك، ثم أبعده. تبقى عيناك على طرفه. يبقى رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Nod up and down, one nod a beat. Your eyes stay on the note on the wall.</source>
            <comment>how.nods-on-target.wall</comment>
            <translation>حرك رأسك إلى أعلى وأسفل، حركة واحدة مع كل نقرة. تبقى عيناك على الورقة التي على الجدار.</translation>
        </message>
        <message>
            <source>Lift your head, then lower it. Keep your eyes shut. Move once a beat.</source>
            <comment>how.nods-together.closed</comment>
            <translation>ارفع رأسك، ثم أنزله. أبقِ عينيك مغمضتين. حركة واحدة مع كل نقرة.</translation>
        </message>
        <message>
            <source>Turn your head from side to side.</source>
            <comment>how.shake</comment>
            <translation>أدر رأسك من جانب إلى جانب.</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them back, and let them drop. Go slowly. Keep your head level.</source>
            <comment>how.shoulders-back.paper</comment>
            <translation>ارفع كتفيك، وأدرهما إلى الخلف، ثم دعهما ينزلان. تحرك ببطء. أبقِ رأسك مستقيمًا.</translation>
        </message>
        <message>
            <source>Lift both shoulders, roll them forward, and let them drop. Go slowly. Keep your head level.</source>
            <comment>how.shoulders-forward.paper</comment>
            <translation>ارفع كتفيك، وأدرهما إلى الأمام، ثم دعهما ينزلان. تحرك ببطء. أبقِ رأسك مستقيمًا.</translation>
        </message>
        <message>
            <source>Keep your eyes shut.</source>
            <comment>how.shut</comment>
            <translation>أبقِ عينيك مغمضتين.</translation>
        </message>
        <message>
            <source>Put one foot right in front of the other. Shut your eyes and stand still.</source>
            <comment>how.stand-tandem.closed</comment>
            <translation>ضع قدمًا أمام الأخرى مباشرة. أغمض عينيك وقف ثابتًا.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your shoulders. Let your arms hang. Chin up. Keep your eyes shut.</source>
            <comment>how.stand.closed</comment>
            <translation>قف وظهرك إلى الركن، وقدماك متباعدتان بعرض كتفيك. دع ذراعيك تتدليان. ارفع ذقنك. أبقِ عينيك مغمضتين.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your hips. Let your arms hang. Chin up. Look at a mark on the wall, as high as your eyes.</source>
            <comment>how.stand.soft</comment>
            <translation>قف وظهرك إلى الركن، وقدماك متباعدتان بعرض وركيك. دع ذراعيك تتدليان. ارفع ذقنك. انظر إلى علامة على الجدار، بارتفاع عينيك.</translation>
        </message>
        <message>
            <source>Stand with your back to the corner, feet as wide as your hips. Let your arms hang. Chin up. Keep your eyes shut.</source>
            <comment>how.stand.soft.closed</comment>
            <translation>قف وظهرك إلى الركن، وقدماك متباعدتان بعرض وركيك. دع ذراعيك تتدليان. ارفع ذقنك. أبقِ عينيك مغمضتين.</translation>
        </message>
        <message>
            <source>Turn your head from side to side, one turn a beat. Your eyes stay on the note on the wall.</source>
            <comment>how.turns-on-target.wall</comment>
            <translation>أدر رأسك من جانب إلى جانب، حركة واحدة مع كل نقرة. تبقى عيناك على الورقة التي على الجدار.</translation>
        </message>
        <message>
            <source>Turn your head to the right, then to the left. Keep your eyes shut. Move once a beat.</source>
            <comment>how.turns-together.closed</comment>
            <translation>أدر رأسك إلى اليمين، ثم إلى اليسار. أبقِ عينيك مغمضتين. حركة واحدة مع كل نقرة.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>leave.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>Go on practising</source>
            <comment>leave.go_on</comment>
            <translation>متابعة التمرين</translation>
        </message>
        <message>
            <source>What you have done so far is kept either way.</source>
            <comment>leave.how</comment>
            <translation>ما أنجزته حتى الآن يبقى محفوظًا في كل الأحوال.</translation>
        </message>
        <message>
            <source>Is that all for today?</source>
            <comment>leave.title</comment>
            <translation>هل هذا كل شيء لليوم؟</translation>
        </message>
        <message>
            <source>Corner to corner</source>
            <comment>lens.across.corner</comment>
            <translation>من ركن إلى ركن</translation>
        </message>
        <message>
            <source>Top to bottom</source>
            <comment>lens.across.upright</comment>
            <translation>من أعلى إلى أسفل</translation>
        </message>
        <message>
            <source>Angle</source>
            <comment>lens.angle</comment>
            <translation>الزاوية</translation>
        </message>
        <message>
            <source>{deg} degrees</source>
            <comment>lens.angle.deg</comment>
            <translation>{deg}°</translation>
        </message>
        <message>
            <source>Distance to the camera</source>
            <comment>lens.distance</comment>
            <translation>البعد عن الكاميرا</translation>
        </message>
        <message>
            <source>{cm} cm</source>
            <comment>lens.distance.cm</comment>
            <translation>{cm} سم</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>lens.distance.none</comment>
            <translation>لم يُقس</translation>
        </message>
        <message>
            <source>Done, and kept for this camera.</source>
            <comment>lens.done</comment>
            <translation>تم، وحُفظ لهذه الكاميرا.</translation>
        </message>
        <message>
            <source>Take the usual value</source>
            <comment>lens.forget</comment>
            <translation>أخذ القيمة المعتادة</translation>
        </message>
        <message>
            <source>{views} of {wanted} views. {hint}</source>
            <comment>lens.going_on</comment>
            <translation>{views} من {wanted} لقطات. {hint}</translation>
        </message>
        <message>
            <source>I see it. Hold it still.</source>
            <comment>lens.hint.sheet_moving</comment>
            <translation>أراها. أبقها ثابتة.</translation>
        </message>
        <message>
            <source>Hold it up so that all four corners show.</source>
            <comment>lens.hint.sheet_none</comment>
            <translation>ارفعها بحيث تظهر الزوايا الأربع كلها.</translation>
        </message>
        <message>
            <source>Good. Now tilt it another way.</source>
            <comment>lens.hint.sheet_same</comment>
            <translation>جيد. أمِلها الآن بطريقة أخرى.</translation>
        </message>
        <message>
            <source>Good. That view is taken.</source>
            <comment>lens.hint.sheet_taken</comment>
            <translation>جيد. أُخذت هذه اللقطة.</translation>
        </message>
        <message>
            <source>Hold a plain bank card by its rim, about a hand's length from the camera, in front of something darker or lighter. Cover its number if you like: no picture is stored. Tilt it to every side, and hold it still each time.</source>
            <comment>lens.how.card</comment>
            <translation>أمسك بطاقة مصرفية بسيطة من حافتها، على بعد كف تقريبًا من الكاميرا، أمام شيء أغمق أو أفتح. غطِّ رقمها إن شئت: لا تُحفظ أي صورة. أمِلها إلى كل جهة، وأبقها ثابتة كل مرة.</translation>
        </message>
        <message>
            <source>Hold a plain white sheet flat in front of something darker, at its edges, about an arm's length from the camera. Tilt it up, down and to both sides, and hold it still each time.</source>
            <comment>lens.how.paper</comment>
            <translation>أمسك ورقة بيضاء مستوية من حوافها أمام شيء أغمق، على بعد ذراع تقريبًا من الكاميرا. أمِلها إلى أعلى وإلى أسفل وإلى الجانبين، وأبقها ثابتة كل مرة.</translation>
        </message>
        <message>
            <source>Take the angle from the camera's papers. Most makers state it corner to corner.</source>
            <comment>lens.how.stated</comment>
            <translation>خذ الزاوية من أوراق الكاميرا. يذكرها معظم الصانعين من زاوية إلى زاوية.</translation>
        </message>
        <message>
            <source>Keep this angle</source>
            <comment>lens.keep</comment>
            <translation>الاحتفاظ بهذه الزاوية</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, measured with a card, give or take {error}.</source>
            <comment>lens.known.card</comment>
            <translation>الكاميرا: {deg} درجة من أعلى إلى أسفل، قيست ببطاقة، بزيادة أو نقص {error}.</translation>
        </message>
        <message>
            <source>Camera: not measured. {deg} degrees are taken, give or take {error}.</source>
            <comment>lens.known.default</comment>
            <translation>الكاميرا: لم تُقس. يُؤخذ {deg} درجة، بزيادة أو نقص {error}.</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, measured with a sheet, give or take {error}.</source>
            <comment>lens.known.paper</comment>
            <translation>الكاميرا: {deg} درجة من أعلى إلى أسفل، قيست بورقة، بزيادة أو نقص {error}.</translation>
        </message>
        <message>
            <source>Camera: {deg} degrees from top to bottom, as typed, give or take {error}.</source>
            <comment>lens.known.stated</comment>
            <translation>الكاميرا: {deg} درجة من أعلى إلى أسفل، كما كُتب، بزيادة أو نقص {error}.</translation>
        </message>
        <message>
            <source>No camera was found.</source>
            <comment>lens.no_camera</comment>
            <translation>لم توجد أي كاميرا.</translation>
        </message>
        <message>
            <source>Camera on, begin</source>
            <comment>lens.start</comment>
            <translation>تشغيل الكاميرا والبدء</translation>
        </message>
        <message>
            <source>Camera off</source>
            <comment>lens.stop</comment>
            <translation>إطفاء الكاميرا</translation>
        </message>
        <message>
            <source>How wide does your camera see?</source>
            <comment>lens.title</comment>
            <translation>ما مدى اتساع رؤية الكاميرا؟</translation>
        </message>
        <message>
            <source>What do you measure with?</source>
            <comment>lens.with</comment>
            <translation>بماذا تقيس؟</translation>
        </message>
        <message>
            <source>A bank card</source>
            <comment>lens.with.card</comment>
            <translation>بطاقة مصرفية</translation>
        </message>
        <message>
            <source>A sheet of A4 paper</source>
            <comment>lens.with.paper</comment>
            <translation>ورقة A4</translation>
        </message>
        <message>
            <source>I know the figure</source>
            <comment>lens.with.stated</comment>
            <translation>أعرف الرقم</translation>
        </message>
        <message>
            <source>The camera is back. Keep counting for yourself, then press Done.</source>
            <comment>lost.again</comment>
            <translation>عادت الكاميرا. واصل العدّ بنفسك، ثم اضغط «تم».</translation>
        </message>
        <message>
            <source>The camera is back. Go on when you are ready: press Space.</source>
            <comment>lost.back</comment>
            <translation>عادت الكاميرا. تابع عندما تكون مستعدًا: اضغط مفتاح المسافة.</translation>
        </message>
        <message>
            <source>Go on and count for yourself. Press Done when you have done them all.</source>
            <comment>lost.count</comment>
            <translation>تابع وعُدّ بنفسك. اضغط «تم» عندما تنتهي منها كلها.</translation>
        </message>
        <message>
            <source>paused</source>
            <comment>lost.figure</comment>
            <translation>توقف مؤقت</translation>
        </message>
        <message>
            <source>Take hold of something firm, or sit down.</source>
            <comment>lost.hold</comment>
            <translation>أمسك بشيء ثابت، أو اجلس.</translation>
        </message>
        <message>
            <source>This is paused.</source>
            <comment>lost.paused</comment>
            <translation>التمرين متوقف مؤقتًا.</translation>
        </message>
        <message>
            <source>The set-up waits. It begins again when the camera is back.</source>
            <comment>lost.setup</comment>
            <translation>الإعداد متوقف مؤقتًا. يبدأ من جديد عندما تعود الكاميرا.</translation>
        </message>
        <message>
            <source>The camera is back. The set-up begins again.</source>
            <comment>lost.setup_again</comment>
            <translation>عادت الكاميرا. يبدأ الإعداد من جديد.</translation>
        </message>
        <message>
            <source>Point your nose straight ahead and hold it. A sound says when to go on.</source>
            <comment>mark.ahead</comment>
            <translation>وجّه أنفك إلى الأمام مباشرة واثبت. يخبرك صوت متى تتابع.</translation>
        </message>
        <message>
            <source>Back to the exercises</source>
            <comment>mark.back</comment>
            <translation>رجوع إلى التمارين</translation>
        </message>
        <message>
            <source>Turn slowly back to straight ahead and hold it until the sound.</source>
            <comment>mark.back_ahead</comment>
            <translation>عُد ببطء إلى الأمام مباشرة واثبت حتى تسمع الصوت.</translation>
        </message>
        <message>
            <source>Begin the check</source>
            <comment>mark.begin</comment>
            <translation>بدء التحقق</translation>
        </message>
        <message>
            <source>The camera was gone for a while. Begin the check again if you like.</source>
            <comment>mark.camera_lost</comment>
            <translation>غابت الكاميرا لبعض الوقت. ابدأ التحقق من جديد إن أردت.</translation>
        </message>
        <message>
            <source>From your eyes to the wall</source>
            <comment>mark.distance</comment>
            <translation>من عينيك إلى الجدار</translation>
        </message>
        <message>
            <source>The camera read {measured} degrees, the tape says {expected}. Both go into your results.</source>
            <comment>mark.found</comment>
            <translation>قرأت الكاميرا {measured} درجة، ويقول الشريط {expected}. يدخل كلاهما في نتائجك.</translation>
        </message>
        <message>
            <source>Your head was not held still long enough at the mark. Try again if you like.</source>
            <comment>mark.gave_up</comment>
            <translation>لم يبقَ رأسك ثابتًا عند العلامة مدة كافية. حاول مرة أخرى إن شئت.</translation>
        </message>
        <message>
            <source>Stick a mark on the wall in front of you, at the height of your eyes and to one side. Measure with a tape from your eyes straight to the wall, and from there along the wall to the mark. You can leave this out.</source>
            <comment>mark.how</comment>
            <translation>ألصق علامة على الجدار أمامك، بارتفاع عينيك وإلى جانب. قِس بشريط من عينيك مباشرة إلى الجدار، ومن هناك على الجدار إلى العلامة. يمكنك ترك هذا.</translation>
        </message>
        <message>
            <source>As last time: wall {distance}, mark {offset}. {side}</source>
            <comment>mark.last</comment>
            <translation>كالمرة الماضية: الجدار {distance}، العلامة {offset}. {side}</translation>
        </message>
        <message>
            <source>Turn slowly until your nose points at the mark. Hold it until the sound.</source>
            <comment>mark.mark</comment>
            <translation>استدر ببطء حتى يشير أنفك إلى العلامة. اثبت حتى تسمع الصوت.</translation>
        </message>
        <message>
            <source>Along the wall to the mark</source>
            <comment>mark.offset</comment>
            <translation>على الجدار إلى العلامة</translation>
        </message>
        <message>
            <source>Check the measuring</source>
            <comment>mark.open</comment>
            <translation>التحقق من القياس</translation>
        </message>
        <message>
            <source>This can't be used: {why}.</source>
            <comment>mark.refused</comment>
            <translation>لا يمكن استخدام هذا: {why}.</translation>
        </message>
        <message>
            <source>Side of the mark</source>
            <comment>mark.side</comment>
            <translation>جهة العلامة</translation>
        </message>
        <message>
            <source>To my left</source>
            <comment>mark.side.left</comment>
            <translation>إلى يساري</translation>
        </message>
        <message>
            <source>To my right</source>
            <comment>mark.side.right</comment>
            <translation>إلى يميني</translation>
        </message>
        <message>
            <source>Is your head measured rightly?</source>
            <comment>mark.title</comment>
            <translation>هل يُقاس رأسك قياسًا صحيحًا؟</translation>
        </message>
        <message>
            <source>First give both lengths, by the tape.</source>
            <comment>mark.unset</comment>
            <translation>أدخل أولًا الطولين كما يقيسهما شريط القياس.</translation>
        </message>
        <message>
            <source>Pressed by mistake: go back</source>
            <comment>meant.back</comment>
            <translation>ضغطت بالخطأ: رجوع</translation>
        </message>
        <message>
            <source>If so, safety questions come now, and that is all practice for today.</source>
            <comment>meant.how</comment>
            <translation>إن كان كذلك فستأتي الآن أسئلة السلامة، وينتهي التدرب لهذا اليوم.</translation>
        </message>
        <message>
            <source>Do you feel unwell?</source>
            <comment>meant.title</comment>
            <translation>هل تشعر بسوء؟</translation>
        </message>
        <message>
            <source>The window was moved, so this is paused. Go on with Space.</source>
            <comment>moved.set</comment>
            <translation>تحركت النافذة، لذلك توقف التمرين مؤقتًا. تابع بمفتاح المسافة.</translation>
        </message>
        <message>
            <source>The window was moved, and the target with it.</source>
            <comment>moved.setup</comment>
            <translation>تحركت النافذة وتحرك معها الهدف.</translation>
        </message>
        <message>
            <source>The set-up begins again in a moment.</source>
            <comment>moved.setup_again</comment>
            <translation>يبدأ الإعداد من جديد بعد لحظة.</translation>
        </message>
        <message>
            <source>Turnpost could not open</source>
            <comment>not_open.title</comment>
            <translation>تعذّر فتح Turnpost</translation>
        </message>
        <message>
            <source>Your saved sessions stay as they are. Restart the computer and try again. If this note comes back, show it to somebody who helps you with the computer. This is what went wrong:</source>
            <comment>not_open.what</comment>
            <translation>جلساتك المحفوظة تبقى كما هي. أعد تشغيل الحاسوب وحاول مرة أخرى. إذا ظهر هذا التنبيه من جديد فأره لمن يساعدك في أمور الحاسوب. هذا ما حدث:</translation>
        </message>
        <message>
            <source>You closed the question without saying how you are. Nobody has been called.</source>
            <comment>over.closed_unsaid</comment>
            <translation>أغلقت السؤال دون أن تقول كيف حالك. لم يُتصل بأحد.</translation>
        </message>
        <message>
            <source>You told of a fall. Your therapist should know before you go on.</source>
            <comment>over.fall</comment>
            <translation>ذكرت أنك سقطت. ينبغي أن يعرف معالجك بذلك قبل أن تواصل.</translation>
        </message>
        <message>
            <source>Good. Sit down and rest. Nobody has been called: if you feel unwell later, call for help. Your therapist reads of the drop when you hand over your sessions.</source>
            <comment>over.fine</comment>
            <translation>حسنًا. اجلس واسترح. لم يُتصل بأحد: إذا شعرت بتوعّك لاحقًا، فاطلب المساعدة. سيقرأ معالجك عن هبوط رأسك عندما تسلّم جلساتك.</translation>
        </message>
        <message>
            <source>Nobody has answered, and nobody has been called.</source>
            <comment>over.no_answer</comment>
            <translation>لم يُجب أحد، ولم يُتصل بأحد.</translation>
        </message>
        <message>
            <source>Sit or lie down where you are safe. Nobody has been called: if you are not better at once, call for help. Your therapist reads of this when you hand over your sessions.</source>
            <comment>over.not_well</comment>
            <translation>اجلس أو استلقِ حيث تكون آمنًا. لم يُتصل بأحد: إذا لم تتحسن فورًا، فاطلب المساعدة. سيقرأ معالجك هذا عندما تسلّم جلساتك.</translation>
        </message>
        <message>
            <source>The number for help: {number}</source>
            <comment>over.number</comment>
            <translation>رقم طلب المساعدة: {number}</translation>
        </message>
        <message>
            <source>The camera saw a sudden drop of your head. If you fell or are hurt, get help now.</source>
            <comment>over.possible_fall</comment>
            <translation>رأت الكاميرا هبوطًا مفاجئًا لرأسك. إذا سقطت أو أُصبت، فاطلب المساعدة الآن.</translation>
        </message>
        <message>
            <source>You felt unwell, and stopping was right. Sit down and rest. If it does not get better, get help.</source>
            <comment>over.stopped_unwell</comment>
            <translation>شعرت بسوء، وكان التوقف صحيحًا. اجلس واسترح. إذا لم تتحسن، فاطلب المساعدة.</translation>
        </message>
        <message>
            <source>Rest now. Your therapist sees how it went when you hand over your sessions.</source>
            <comment>over.symptom_rule</comment>
            <translation>استرح الآن. سيرى معالجك كيف كان الأمر عندما تسلّم جلساتك.</translation>
        </message>
        <message>
            <source>That is all for today</source>
            <comment>over.title</comment>
            <translation>هذا كل شيء لليوم</translation>
        </message>
        <message>
            <source>Show what I did</source>
            <comment>over.to_summary</comment>
            <translation>عرض ما فعلته</translation>
        </message>
        <message>
            <source>{part}: your head moved.</source>
            <comment>part.moved</comment>
            <translation>{part}: تحرك رأسك.</translation>
        </message>
        <message>
            <source>{part}: seen well.</source>
            <comment>part.seen</comment>
            <translation>{part}: كانت الرؤية جيدة.</translation>
        </message>
        <message>
            <source>{part}: your head went less far than your exercises need.</source>
            <comment>part.short</comment>
            <translation>{part}: وصل رأسك إلى أقل مما تحتاجه تمارينك.</translation>
        </message>
        <message>
            <source>{part}: your face was often not seen.</source>
            <comment>part.unseen</comment>
            <translation>{part}: لم يُرَ وجهك كثيرًا من الوقت.</translation>
        </message>
        <message>
            <source>This plan can't be used. {why}</source>
            <comment>plan.bad</comment>
            <translation>لا يمكن استخدام هذه الخطة. {why}</translation>
        </message>
        <message>
            <source>Plans (*.json)</source>
            <comment>plan.files</comment>
            <translation>الخطط (*.json)</translation>
        </message>
        <message>
            <source>Your plan. Exercises: {entries}.</source>
            <comment>plan.named</comment>
            <translation>خطّتك. عدد التمارين: {entries}.</translation>
        </message>
        <message>
            <source>Already noted today, at {time}. Note it again only if you practised again.</source>
            <comment>plan.noted_today</comment>
            <translation>سُجّل اليوم بالفعل، في {time}. لا تسجّله مرة أخرى إلا إذا تمرّنت مرة أخرى.</translation>
        </message>
        <message>
            <source>Open a plan</source>
            <comment>plan.open</comment>
            <translation>فتح خطة</translation>
        </message>
        <message>
            <source>I practised without the laptop</source>
            <comment>plan.report</comment>
            <translation>تمرنت من دون الحاسوب</translation>
        </message>
        <message>
            <source>I practised once more</source>
            <comment>plan.report_again</comment>
            <translation>تمرّنتُ مرة أخرى</translation>
        </message>
        <message>
            <source>Practise my plan</source>
            <comment>plan.start</comment>
            <translation>التمرن حسب خطتي</translation>
        </message>
        <message>
            <source>Seated starter</source>
            <comment>plan.starter</comment>
            <translation>بداية مع الجلوس</translation>
        </message>
        <message>
            <source>Practise the starter</source>
            <comment>plan.starter_begin</comment>
            <translation>التمرن على البداية</translation>
        </message>
        <message>
            <source>The seated starter: {entries} exercises on a chair. Do it only if your therapist has told you to.</source>
            <comment>plan.starter_named</comment>
            <translation>البداية مع الجلوس: عدد التمارين على الكرسي {entries}. افعلها فقط إذا قال لك معالجك ذلك.</translation>
        </message>
        <message>
            <source>Try one exercise</source>
            <comment>plan.try</comment>
            <translation>تجربة تمرين واحد</translation>
        </message>
        <message>
            <source>any key stops</source>
            <comment>practice.any_key</comment>
            <translation>أي مفتاح يوقف</translation>
        </message>
        <message>
            <source>{low} to {high} degrees to each side, {tempo} beats a minute</source>
            <comment>practice.asked</comment>
            <translation>من {low} إلى {high} درجة إلى كل جانب، {tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>About {about} degrees to each side, {tempo} beats a minute</source>
            <comment>practice.asked_about</comment>
            <translation>نحو {about} درجة إلى كل جانب، {tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>{low} to {high}° (this screen's limit), {tempo} beats a minute</source>
            <comment>practice.asked_less</comment>
            <translation>من {low} إلى {high}° (حد هذه الشاشة)، {tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>practice.asked_tempo</comment>
            <translation>{tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>This computer is busy and measures fewer pictures. Carry on.</source>
            <comment>practice.busy</comment>
            <translation>الحاسوب مشغول ويقيس صورًا أقلّ. تابع.</translation>
        </message>
        <message>
            <source>Starting in {seconds}</source>
            <comment>practice.countdown</comment>
            <translation>يبدأ بعد {seconds}</translation>
        </message>
        <message>
            <source>The disk takes nothing just now. Carry on: you can save at the end.</source>
            <comment>practice.disk</comment>
            <translation>لا يمكن الحفظ الآن. تابع: يمكنك الحفظ في النهاية.</translation>
        </message>
        <message>
            <source>I see double (D)</source>
            <comment>practice.double</comment>
            <translation>أرى شيئين (D)</translation>
        </message>
        <message>
            <source>I see double: stop, key D</source>
            <comment>practice.double_name</comment>
            <translation>أرى شيئين: توقف، المفتاح D</translation>
        </message>
        <message>
            <source>Go on (Space)</source>
            <comment>practice.go_on</comment>
            <translation>متابعة (المسافة)</translation>
        </message>
        <message>
            <source>Not measured: {reason}</source>
            <comment>practice.not_measured</comment>
            <translation>لا يُقاس: {reason}</translation>
        </message>
        <message>
            <source>{done} of {goal}</source>
            <comment>practice.of</comment>
            <translation>{done} من {goal}</translation>
        </message>
        <message>
            <source>Pause (Space)</source>
            <comment>practice.pause</comment>
            <translation>توقف قليلًا (المسافة)</translation>
        </message>
        <message>
            <source>Paused. Rest as long as you like.</source>
            <comment>practice.paused</comment>
            <translation>توقف مؤقت. استرح كما تشاء.</translation>
        </message>
        <message>
            <source>Hide me (P)</source>
            <comment>practice.picture_hide</comment>
            <translation>أخفني (P)</translation>
        </message>
        <message>
            <source>Show me (P)</source>
            <comment>practice.picture_show</comment>
            <translation>أظهرني (P)</translation>
        </message>
        <message>
            <source>Saving your session ...</source>
            <comment>practice.saving</comment>
            <translation>جارٍ حفظ جلستك ...</translation>
        </message>
        <message>
            <source>Stop (Esc)</source>
            <comment>practice.stop</comment>
            <translation>إيقاف (Esc)</translation>
        </message>
        <message>
            <source>Stop at once, key Escape</source>
            <comment>practice.stop_name</comment>
            <translation>إيقاف فوري، المفتاح Escape</translation>
        </message>
        <message>
            <source>No picture is stored. Nothing leaves this computer. Your results are files in your own folder, and you can delete them.</source>
            <comment>privacy</comment>
            <translation>لا تُحفظ أي صورة. لا يخرج شيء من هذا الحاسوب. نتائجك ملفات في مجلدك أنت، ويمكنك حذفها.</translation>
        </message>
        <message>
            <source>Turnpost</source>
            <comment>program</comment>
            <translation>Turnpost</translation>
        </message>
        <message>
            <source>Read on ↓</source>
            <comment>read_on</comment>
            <translation>تابع القراءة ↓</translation>
        </message>
        <message>
            <source>your eyes went farther to the side than in the set-up</source>
            <comment>reason.beyond_setup</comment>
            <translation>ذهبت عيناك إلى الجانب أبعد مما كان في الإعداد</translation>
        </message>
        <message>
            <source>the picture is blurred</source>
            <comment>reason.blurred</comment>
            <translation>الصورة غير واضحة</translation>
        </message>
        <message>
            <source>something covers your face, or the light on it has changed</source>
            <comment>reason.covered</comment>
            <translation>شيء يغطي وجهك، أو تغير الضوء عليه</translation>
        </message>
        <message>
            <source>your eyes are shut</source>
            <comment>reason.eyes_shut</comment>
            <translation>عيناك مغمضتان</translation>
        </message>
        <message>
            <source>the light on your eyes, or your glasses, changed since the set-up</source>
            <comment>reason.eyes_unlike</comment>
            <translation>تغير الضوء على عينيك، أو تغيرت نظارتك، منذ الإعداد</translation>
        </message>
        <message>
            <source>the light on your eyes, or your glasses, changed since the set-up</source>
            <comment>reason.eyes_unlike_around</comment>
            <translation>تغير الضوء على عينيك، أو تغيرت نظارتك، منذ الإعداد</translation>
        </message>
        <message>
            <source>pictures are missing</source>
            <comment>reason.gap</comment>
            <translation>هناك صور ناقصة</translation>
        </message>
        <message>
            <source>your eyes seem to rest beside the target: do the set-up again</source>
            <comment>reason.gaze_beside</comment>
            <translation>يبدو أن عينيك تستقران بجانب الهدف: أعد الإعداد</translation>
        </message>
        <message>
            <source>your shoulders and hands are not all seen</source>
            <comment>reason.no_body</comment>
            <translation>لا يظهر كتفاك ويداك كلها</translation>
        </message>
        <message>
            <source>your face is not in the picture</source>
            <comment>reason.no_face</comment>
            <translation>وجهك ليس في الصورة</translation>
        </message>
        <message>
            <source>there was no set-up</source>
            <comment>reason.no_setup</comment>
            <translation>لم يكن هناك إعداد</translation>
        </message>
        <message>
            <source>there is nothing to measure by</source>
            <comment>reason.other</comment>
            <translation>لا شيء يمكن القياس به</translation>
        </message>
        <message>
            <source>the measuring is starting again</source>
            <comment>reason.restarting</comment>
            <translation>يبدأ القياس من جديد</translation>
        </message>
        <message>
            <source>no picture comes from the camera</source>
            <comment>reason.silent</comment>
            <translation>لا تأتي صورة من الكاميرا</translation>
        </message>
        <message>
            <source>it is too dark</source>
            <comment>reason.too_dark</comment>
            <translation>المكان مظلم جدًا</translation>
        </message>
        <message>
            <source>you are too far away</source>
            <comment>reason.too_far</comment>
            <translation>أنت بعيد جدًا</translation>
        </message>
        <message>
            <source>your head is turned too far</source>
            <comment>reason.turned_too_far</comment>
            <translation>رأسك مُدار كثيرًا</translation>
        </message>
        <message>
            <source>your glasses change as you nod</source>
            <comment>reason.varifocal</comment>
            <translation>نظارتك تتغير مع حركة رأسك إلى الأعلى والأسفل</translation>
        </message>
        <message>
            <source>Recordings that broke off and are damaged at the beginning: {n}. Whose they are can't be told. They can be saved without a name, but do not count for the plan. Repetitions in all: {count}.</source>
            <comment>recover.damaged</comment>
            <translation>تسجيلات انقطعت قبل نهايتها وبداياتها تالفة: {n}. لا يُعرف لمن هي. يمكن حفظها من دون اسم، لكنها لا تُحسب للخطة. عدد المرات كلها: {count}.</translation>
        </message>
        <message>
            <source>A recording of {when} broke off, and its beginning is damaged: whose it is can't be told. It can be saved without a name, but does not count for the plan. Repetitions: {count}.</source>
            <comment>recover.damaged.one</comment>
            <translation>تسجيل بتاريخ {when} انقطع قبل نهايته، وبدايته تالفة: لا يُعرف لمن هو. يمكن حفظه من دون اسم، لكنه لا يُحسب للخطة. عدد المرات: {count}.</translation>
        </message>
        <message>
            <source>Some of it could not be saved: {why}. It stays where it is, and Turnpost asks again next time.</source>
            <comment>recover.failed</comment>
            <translation>تعذر حفظ جزء منها: {why}. يبقى في مكانه، ويسألك Turnpost مرة أخرى في المرة القادمة.</translation>
        </message>
        <message>
            <source>Ask me next time</source>
            <comment>recover.later</comment>
            <translation>اسألني في المرة القادمة</translation>
        </message>
        <message>
            <source>{n} of your sessions broke off before their end. What you did until then is kept. Repetitions in all: {count}.</source>
            <comment>recover.many</comment>
            <translation>عدد جلساتك التي انقطعت قبل نهايتها: {n}. ما فعلته حتى ذلك الحين محفوظ. عدد المرات كلها: {count}.</translation>
        </message>
        <message>
            <source>A newer version of Turnpost has recorded something here that broke off. It stays as it is. Open the newer version to save it.</source>
            <comment>recover.newer</comment>
            <translation>سجّل إصدار أحدث من Turnpost هنا شيئًا انقطع قبل نهايته. يبقى كما هو. افتح الإصدار الأحدث لحفظه.</translation>
        </message>
        <message>
            <source>Your session of {when} broke off before its end. What you did until then is kept. Repetitions: {count}.</source>
            <comment>recover.one</comment>
            <translation>انقطعت جلستك بتاريخ {when} قبل نهايتها. ما فعلته حتى ذلك الحين محفوظ. عدد المرات: {count}.</translation>
        </message>
        <message>
            <source>Good</source>
            <comment>recover.read</comment>
            <translation>حسنًا</translation>
        </message>
        <message>
            <source>Save what I did</source>
            <comment>recover.save</comment>
            <translation>احفظ ما فعلته</translation>
        </message>
        <message>
            <source>Saved, and marked as broken off. It is in {folder}</source>
            <comment>recover.saved</comment>
            <translation>حُفظت، مع علامة أنها انقطعت. هي في {folder}</translation>
        </message>
        <message>
            <source>Saving what you did ...</source>
            <comment>recover.saving</comment>
            <translation>جارٍ حفظ ما فعلته ...</translation>
        </message>
        <message>
            <source>Broken off, and too damaged at the beginning to tell whether it is yours or from trying the sample: {n}. It can be saved, but does not count for the plan. Repetitions in it: {count}.</source>
            <comment>recover.unsure</comment>
            <translation>انقطع قبل نهايته، وبدايته تالفة إلى حدّ لا يُعرف معه هل هو لك أم من تجربة المثال: {n}. يمكن حفظه، لكنه لا يُحسب للخطة. عدد التكرارات فيه: {count}.</translation>
        </message>
        <message>
            <source>You feel dizzy today, so you stay on your chair.</source>
            <comment>refused.high_start</comment>
            <translation>تشعر بالدوخة اليوم، لذلك تبقى على كرسيك.</translation>
        </message>
        <message>
            <source>This one comes later.</source>
            <comment>refused.locked</comment>
            <translation>هذا يأتي لاحقًا.</translation>
        </message>
        <message>
            <source>The screen can show this one only while you sit in front of it.</source>
            <comment>refused.moving_target</comment>
            <translation>لا تستطيع الشاشة عرض هذا إلا وأنت جالس أمامها.</translation>
        </message>
        <message>
            <source>You left this one out, as no camera could be used.</source>
            <comment>refused.no_camera</comment>
            <translation>تركت هذا، لأنه لم تكن هناك كاميرا صالحة للاستعمال.</translation>
        </message>
        <message>
            <source>A helper has to stand next to you.</source>
            <comment>refused.no_helper</comment>
            <translation>يجب أن يقف بجانبك شخص يساعدك.</translation>
        </message>
        <message>
            <source>There are no notes on the wall for it.</source>
            <comment>refused.no_marks</comment>
            <translation>لا توجد أوراق على الجدار لهذا التمرين.</translation>
        </message>
        <message>
            <source>There is no practice today.</source>
            <comment>refused.no_session</comment>
            <translation>لا تمرين اليوم.</translation>
        </message>
        <message>
            <source>First say how dizzy you are now.</source>
            <comment>refused.no_start_score</comment>
            <translation>قل أولًا كم تشعر بالدوخة الآن.</translation>
        </message>
        <message>
            <source>You need to hear the voice for this, or a helper who reads to you. Turn on the sound.</source>
            <comment>refused.no_voice</comment>
            <translation>تحتاج لهذا إلى سماع الصوت، أو إلى شخص يقرأ لك. شغّل الصوت.</translation>
        </message>
        <message>
            <source>Your therapist has not opened this one yet.</source>
            <comment>refused.not_cleared</comment>
            <translation>لم يفتح معالجك هذا بعد.</translation>
        </message>
        <message>
            <source>You left this one out.</source>
            <comment>refused.not_in_place</comment>
            <translation>تركت هذا.</translation>
        </message>
        <message>
            <source>You saw two here today. That is enough of it for one day.</source>
            <comment>refused.saw_double</comment>
            <translation>رأيت هنا شيئين اليوم. هذا يكفي منه ليوم واحد.</translation>
        </message>
        <message>
            <source>You stopped before this one.</source>
            <comment>refused.session_ended</comment>
            <translation>توقفت قبل هذا.</translation>
        </message>
        <message>
            <source>The target has too little room to move here. It needs a larger window, or you a little closer.</source>
            <comment>refused.small_screen</comment>
            <translation>لا يجد الهدف هنا مكانًا كافيًا ليتحرك. يلزم أن تكون النافذة أكبر، أو أن تقترب قليلًا.</translation>
        </message>
        <message>
            <source>You have asked for a screen on which nothing moves.</source>
            <comment>refused.still_screen</comment>
            <translation>طلبت شاشة لا يتحرك عليها شيء.</translation>
        </message>
        <message>
            <source>First say that you have something or someone to hold on to.</source>
            <comment>refused.support_not_confirmed</comment>
            <translation>قل أولًا إن عندك شيئًا أو شخصًا تمسك به.</translation>
        </message>
        <message>
            <source>Table, a row a session ({ending})</source>
            <comment>report.csv</comment>
            <translation>جدول، سطر لكل جلسة ({ending})</translation>
        </message>
        <message>
            <source>Written, of {count} sessions: {path}</source>
            <comment>report.done</comment>
            <translation>كُتب، عدد الجلسات {count}: {path}</translation>
        </message>
        <message>
            <source>No report: {why}</source>
            <comment>report.failed</comment>
            <translation>لا تقرير: {why}</translation>
        </message>
        <message>
            <source>For a record system, FHIR R4 ({ending})</source>
            <comment>report.fhir</comment>
            <translation>لنظام سجلات، FHIR R4 ({ending})</translation>
        </message>
        <message>
            <source>Report to read on a screen, HTML ({ending})</source>
            <comment>report.html</comment>
            <translation>تقرير للقراءة على الشاشة، HTML ({ending})</translation>
        </message>
        <message>
            <source>Left out, because they broke off and were not saved: {count}.</source>
            <comment>report.left_out</comment>
            <translation>لم تُضَف لأنها انقطعت ولم تُحفظ: {count}.</translation>
        </message>
        <message>
            <source>Make a report</source>
            <comment>report.make</comment>
            <translation>صنع تقرير</translation>
        </message>
        <message>
            <source>no session is shown that can be reported</source>
            <comment>report.nothing</comment>
            <translation>لا تُعرض جلسة يمكن كتابة تقرير عنها</translation>
        </message>
        <message>
            <source>{path} holds what was measured or written, or has the name of a session's file; name another file for the report</source>
            <comment>report.over</comment>
            <translation>{path} يحتوي على ما قيس أو كُتب، أو يحمل اسم ملف من ملفات جلسة؛ سمِّ ملفًا آخر للتقرير</translation>
        </message>
        <message>
            <source>Report to file, a page a session, PDF ({ending})</source>
            <comment>report.pdf</comment>
            <translation>تقرير للحفظ، صفحة لكل جلسة، PDF ({ending})</translation>
        </message>
        <message>
            <source>Report with all figures, PDF ({ending})</source>
            <comment>report.pdf_details</comment>
            <translation>تقرير بكل القيم، PDF ({ending})</translation>
        </message>
        <message>
            <source>Table, a row a repetition ({ending})</source>
            <comment>report.repetitions_csv</comment>
            <translation>جدول، سطر لكل مرة ({ending})</translation>
        </message>
        <message>
            <source>Table, a row a questionnaire score ({ending})</source>
            <comment>report.scores_csv</comment>
            <translation>جدول، صف لكل درجة استبيان ({ending})</translation>
        </message>
        <message>
            <source>{path} is there already; choose it with its ending, or name another file</source>
            <comment>report.there</comment>
            <translation>{path} موجود من قبل؛ اختره مع لاحقته أو اذكر ملفًا آخر</translation>
        </message>
        <message>
            <source>Table of practice and trends ({ending})</source>
            <comment>report.trends_csv</comment>
            <translation>جدول التمرينات والتطور ({ending})</translation>
        </message>
        <message>
            <source>Making the report ...</source>
            <comment>report.working</comment>
            <translation>جارٍ صنع التقرير ...</translation>
        </message>
        <message>
            <source>Ask your therapist, on the phone or in a call, to read out the words of your plan. They must be:</source>
            <comment>same.ask</comment>
            <translation>اطلب من معالجك، على الهاتف أو في مكالمة، أن يقرأ لك كلمات خطتك. يجب أن تكون هذه:</translation>
        </message>
        <message>
            <source>Compare later</source>
            <comment>same.later</comment>
            <translation>المقارنة لاحقًا</translation>
        </message>
        <message>
            <source>What you hand over later will be locked: only your clinic can open it.</source>
            <comment>same.locked</comment>
            <translation>ما تسلمه لاحقًا يكون مقفلًا: عيادتك وحدها تستطيع فتحه.</translation>
        </message>
        <message>
            <source>A word is different</source>
            <comment>same.no</comment>
            <translation>كلمة مختلفة</translation>
        </message>
        <message>
            <source>Compare the words</source>
            <comment>same.open</comment>
            <translation>مقارنة الكلمات</translation>
        </message>
        <message>
            <source>Your clinic has chosen files without a lock. What you hand over later can be read by whoever gets hold of the file.</source>
            <comment>same.plain</comment>
            <translation>اختارت عيادتك ملفات بلا قفل. ما تسلمه لاحقًا يستطيع قراءته كل من يحصل على الملف.</translation>
        </message>
        <message>
            <source>The words did not match, so this plan is put away. Ask your therapist to give you the plan again.</source>
            <comment>same.refused</comment>
            <translation>لم تتطابق الكلمات، لذلك وُضعت هذه الخطة جانبًا. اطلب من معالجك أن يعطيك الخطة من جديد.</translation>
        </message>
        <message>
            <source>Is it your therapist's plan?</source>
            <comment>same.title</comment>
            <translation>هل هذه خطة معالجك؟</translation>
        </message>
        <message>
            <source>One other word, and somebody may have changed the plan on its way. Then do not use it.</source>
            <comment>same.why</comment>
            <translation>إذا اختلفت كلمة واحدة، فربما غيّر أحد الخطة في طريقها. عندئذ لا تستخدمها.</translation>
        </message>
        <message>
            <source>{number}. {word}</source>
            <comment>same.word</comment>
            <translation>{number}. {word}</translation>
        </message>
        <message>
            <source>All words are the same</source>
            <comment>same.yes</comment>
            <translation>كل الكلمات متطابقة</translation>
        </message>
        <message>
            <source>Begin now.</source>
            <comment>say.begin</comment>
            <translation>ابدأ الآن.</translation>
        </message>
        <message>
            <source>Come to the screen once you feel steady.</source>
            <comment>say.come</comment>
            <translation>تعال إلى الشاشة عندما تشعر بالثبات.</translation>
        </message>
        <message>
            <source>Stop here. Move your finger back out.</source>
            <comment>say.double</comment>
            <translation>توقف هنا. أبعد إصبعك من جديد.</translation>
        </message>
        <message>
            <source>And stop. This one is done.</source>
            <comment>say.end</comment>
            <translation>والآن توقف. انتهى هذا التمرين.</translation>
        </message>
        <message>
            <source>Nobody has been called. If you are hurt, call for help.</source>
            <comment>say.fall</comment>
            <translation>لم يُتصل بأحد. إذا أُصبت، فاطلب المساعدة.</translation>
        </message>
        <message>
            <source>Half the time is over.</source>
            <comment>say.half</comment>
            <translation>مضى نصف الوقت.</translation>
        </message>
        <message>
            <source>Open your eyes.</source>
            <comment>say.open_eyes</comment>
            <translation>افتح عينيك.</translation>
        </message>
        <message>
            <source>That is half. Now with the other arm.</source>
            <comment>say.other_arm</comment>
            <translation>هذا هو النصف. الآن بالذراع الأخرى.</translation>
        </message>
        <message>
            <source>I can't see you. Take your time. When you are steady, sit down on your chair, so that I see you again.</source>
            <comment>say.out_of_sight</comment>
            <translation>لا أراك. خذ وقتك. عندما تشعر بالثبات، اجلس على كرسيك كي أراك من جديد.</translation>
        </message>
        <message>
            <source>Now rest for a while.</source>
            <comment>say.rest</comment>
            <translation>استرح الآن قليلًا.</translation>
        </message>
        <message>
            <source>Shut your eyes.</source>
            <comment>say.shut</comment>
            <translation>أغمض عينيك.</translation>
        </message>
        <message>
            <source>Sit down if you can.</source>
            <comment>say.sit</comment>
            <translation>اجلس إن استطعت.</translation>
        </message>
        <message>
            <source>It begins in {seconds} seconds.</source>
            <comment>say.soon</comment>
            <translation>يبدأ بعد {seconds} من الثواني.</translation>
        </message>
        <message>
            <source>Stand firm.</source>
            <comment>say.stand_firm</comment>
            <translation>قف بثبات.</translation>
        </message>
        <message>
            <source>Stopped.</source>
            <comment>say.stopped</comment>
            <translation>توقف التمرين.</translation>
        </message>
        <message>
            <source>This is how I speak to you while you practise.</source>
            <comment>say.test</comment>
            <translation>هكذا أتكلم معك وأنت تتمرن.</translation>
        </message>
        <message>
            <source>Only two more.</source>
            <comment>say.two_left</comment>
            <translation>بقيت مرتان فقط.</translation>
        </message>
        <message>
            <source>How dizzy are you now?</source>
            <comment>score.dizziness</comment>
            <translation>كم تشعر بالدوخة الآن؟</translation>
        </message>
        <message>
            <source>Go on</source>
            <comment>score.done</comment>
            <translation>متابعة</translation>
        </message>
        <message>
            <source>Press a number, or use the arrow keys. For ten press 1, then 0.</source>
            <comment>score.how</comment>
            <translation>اضغط رقمًا، أو استخدم مفاتيح الأسهم. للعشرة اضغط 1 ثم 0.</translation>
        </message>
        <message>
            <source>0: not at all</source>
            <comment>score.least</comment>
            <translation>0: لا شيء</translation>
        </message>
        <message>
            <source>I do not remember</source>
            <comment>score.leave_out</comment>
            <translation>لا أتذكر</translation>
        </message>
        <message>
            <source>10: it can't get worse</source>
            <comment>score.most</comment>
            <translation>10: لا يمكن أن يكون أسوأ</translation>
        </message>
        <message>
            <source>How sick do you feel now?</source>
            <comment>score.nausea</comment>
            <translation>كم تشعر بالغثيان الآن؟</translation>
        </message>
        <message>
            <source>And how dizzy on the morning after?</source>
            <comment>score.next_morning</comment>
            <translation>وكم شعرت بالدوخة في الصباح التالي؟</translation>
        </message>
        <message>
            <source>After last time: how dizzy were you for the rest of that day?</source>
            <comment>score.rest_of_day</comment>
            <translation>بعد المرة الأخيرة: كم شعرت بالدوخة بقية ذلك اليوم؟</translation>
        </message>
        <message>
            <source>How unsteady do you feel now?</source>
            <comment>score.unsteadiness</comment>
            <translation>كم تشعر بعدم الثبات الآن؟</translation>
        </message>
        <message>
            <source>{value} of 10</source>
            <comment>score.value</comment>
            <translation>{value} من 10</translation>
        </message>
        <message>
            <source>Add the score</source>
            <comment>scores.add</comment>
            <translation>أضف الدرجة</translation>
        </message>
        <message>
            <source>Kept: {name}, {score} ({least} to {most}), {day}.</source>
            <comment>scores.added</comment>
            <translation>حُفظ: {name}، {score} (من {least} إلى {most})، {day}.</translation>
        </message>
        <message>
            <source>That day is still to come.</source>
            <comment>scores.ahead</comment>
            <translation>هذا اليوم لم يأتِ بعد.</translation>
        </message>
        <message>
            <source>Last against first</source>
            <comment>scores.col.change</comment>
            <translation>الأخيرة مقارنة بالأولى</translation>
        </message>
        <message>
            <source>First</source>
            <comment>scores.col.first</comment>
            <translation>الأولى</translation>
        </message>
        <message>
            <source>Last</source>
            <comment>scores.col.last</comment>
            <translation>الأخيرة</translation>
        </message>
        <message>
            <source>Questionnaire</source>
            <comment>scores.col.name</comment>
            <translation>الاستبيان</translation>
        </message>
        <message>
            <source>All scores</source>
            <comment>scores.col.trend</comment>
            <translation>كل الدرجات</translation>
        </message>
        <message>
            <source>{name} ({least} to {most})</source>
            <comment>scores.course</comment>
            <translation>{name} ({least} إلى {most})</translation>
        </message>
        <message>
            <source>Filled in on</source>
            <comment>scores.day</comment>
            <translation>تاريخ التعبئة</translation>
        </message>
        <message>
            <source>The least possible must be below the most.</source>
            <comment>scores.ends</comment>
            <translation>يجب أن تكون أدنى درجة ممكنة أقل من أعلى درجة.</translation>
        </message>
        <message>
            <source>Not kept: {why}</source>
            <comment>scores.failed</comment>
            <translation>لم يُحفظ: {why}</translation>
        </message>
        <message>
            <source>{by} higher</source>
            <comment>scores.higher</comment>
            <translation>أعلى بمقدار {by}</translation>
        </message>
        <message>
            <source>Only the score is kept, not the questions. How much a score varies by itself, and which end is the better one, is not known here.</source>
            <comment>scores.how</comment>
            <translation>تُحفظ الدرجة وحدها، لا الأسئلة. لا يُعرف هنا كم تتغير الدرجة من تلقاء نفسها، ولا أي طرف هو الأفضل.</translation>
        </message>
        <message>
            <source>Least possible</source>
            <comment>scores.least</comment>
            <translation>أدنى درجة ممكنة</translation>
        </message>
        <message>
            <source>{by} lower</source>
            <comment>scores.lower</comment>
            <translation>أقل بمقدار {by}</translation>
        </message>
        <message>
            <source>Most possible</source>
            <comment>scores.most</comment>
            <translation>أعلى درجة ممكنة</translation>
        </message>
        <message>
            <source>Questionnaire</source>
            <comment>scores.name</comment>
            <translation>الاستبيان</translation>
        </message>
        <message>
            <source>Type the name of the questionnaire.</source>
            <comment>scores.no_name</comment>
            <translation>اكتب اسم الاستبيان.</translation>
        </message>
        <message>
            <source>“{field}” needs a number between -{most} and {most}.</source>
            <comment>scores.no_number</comment>
            <translation>يحتاج «{field}» إلى رقم بين -{most} و{most}.</translation>
        </message>
        <message>
            <source>These sessions name nobody: a score would be nobody's.</source>
            <comment>scores.no_person</comment>
            <translation>هذه الجلسات لا تسمّي أحدًا: لن تكون الدرجة لأحد.</translation>
        </message>
        <message>
            <source>There is no score of yours to take back.</source>
            <comment>scores.no_undo</comment>
            <translation>لا توجد درجة لك يمكن التراجع عنها.</translation>
        </message>
        <message>
            <source>Entered some time ago and still there: {name}, {score}, {day}.</source>
            <comment>scores.older</comment>
            <translation>سُجّلت منذ مدة وما زالت موجودة: {name}، {score}، {day}.</translation>
        </message>
        <message>
            <source>{score}, {day}</source>
            <comment>scores.on</comment>
            <translation>{score}، {day}</translation>
        </message>
        <message>
            <source>only one score</source>
            <comment>scores.only</comment>
            <translation>درجة واحدة فقط</translation>
        </message>
        <message>
            <source>The score must lie between {least} and {most}.</source>
            <comment>scores.outside</comment>
            <translation>يجب أن تكون الدرجة بين {least} و{most}.</translation>
        </message>
        <message>
            <source>the same</source>
            <comment>scores.same</comment>
            <translation>لا فرق</translation>
        </message>
        <message>
            <source>Score</source>
            <comment>scores.score</comment>
            <translation>الدرجة</translation>
        </message>
        <message>
            <source>Take this old score back</source>
            <comment>scores.sure</comment>
            <translation>التراجع عن هذه الدرجة القديمة</translation>
        </message>
        <message>
            <source>Questionnaires</source>
            <comment>scores.tab</comment>
            <translation>الاستبيانات</translation>
        </message>
        <message>
            <source>Undo my last score</source>
            <comment>scores.undo</comment>
            <translation>تراجع عن آخر درجة لي</translation>
        </message>
        <message>
            <source>Taken back: {name}, {score}, {day}.</source>
            <comment>scores.undone</comment>
            <translation>تم التراجع: {name}، {score}، {day}.</translation>
        </message>
        <message>
            <source>This older score may be of another computer with the same login: {name}, {score}, {day}.</source>
            <comment>scores.unsigned</comment>
            <translation>قد تكون هذه الدرجة الأقدم من حاسوب آخر بتسجيل الدخول نفسه: {name}، {score}، {day}.</translation>
        </message>
        <message>
            <source>It fits</source>
            <comment>screen.fits</comment>
            <translation>مطابق</translation>
        </message>
        <message>
            <source>Forget the measure</source>
            <comment>screen.forget</comment>
            <translation>نسيان القياس</translation>
        </message>
        <message>
            <source>Put the card's upper left corner on the corner drawn here. Fit the size with the arrow keys.</source>
            <comment>screen.how</comment>
            <translation>ضع زاوية البطاقة العليا اليسرى على الزاوية المرسومة. اضبط الحجم بمفاتيح الأسهم.</translation>
        </message>
        <message>
            <source>Screen: not measured, and it does not say. {cm} cm are taken for its width.</source>
            <comment>screen.known.assumed</comment>
            <translation>الشاشة: لم تُقس، ولا تقول عرضها. يُؤخذ {cm} سم عرضًا لها.</translation>
        </message>
        <message>
            <source>Screen: {cm} cm wide, measured with a card.</source>
            <comment>screen.known.card</comment>
            <translation>الشاشة: عرضها {cm} سم، قيست ببطاقة.</translation>
        </message>
        <message>
            <source>Screen: {cm} cm wide, as the screen says of itself.</source>
            <comment>screen.known.screen</comment>
            <translation>الشاشة: عرضها {cm} سم، كما تقول هي.</translation>
        </message>
        <message>
            <source>Larger</source>
            <comment>screen.larger</comment>
            <translation>أكبر</translation>
        </message>
        <message>
            <source>Outline of a card</source>
            <comment>screen.outline</comment>
            <translation>حدود بطاقة</translation>
        </message>
        <message>
            <source>Smaller</source>
            <comment>screen.smaller</comment>
            <translation>أصغر</translation>
        </message>
        <message>
            <source>Hold a bank card against the screen</source>
            <comment>screen.title</comment>
            <translation>ضع بطاقة مصرفية على الشاشة</translation>
        </message>
        <message>
            <source>{mm} pixels wide</source>
            <comment>screen.width</comment>
            <translation>العرض {mm} بكسل</translation>
        </message>
        <message>
            <source>You sit about {cm} cm from the screen, give or take {error} cm.</source>
            <comment>seat.about</comment>
            <translation>تجلس على بعد نحو {cm} سم من الشاشة، بفارق يصل إلى {error} سم.</translation>
        </message>
        <message>
            <source>Go on as I sit</source>
            <comment>seat.anyway</comment>
            <translation>المتابعة كما أجلس</translation>
        </message>
        <message>
            <source>Too near for this exercise. Move back by about {cm} cm.</source>
            <comment>seat.back</comment>
            <translation>قريب جدًا لهذا التمرين. ابتعد بنحو {cm} سم.</translation>
        </message>
        <message>
            <source>A little near for this exercise. Move back by about the width of your hand.</source>
            <comment>seat.back.hand</comment>
            <translation>قريب قليلًا لهذا التمرين. ابتعد بمقدار عرض كفك تقريبًا.</translation>
        </message>
        <message>
            <source>Too far for this exercise. Come closer by about {cm} cm.</source>
            <comment>seat.closer</comment>
            <translation>بعيد جدًا لهذا التمرين. اقترب بنحو {cm} سم.</translation>
        </message>
        <message>
            <source>A little far for this exercise. Come closer by about the width of your hand.</source>
            <comment>seat.closer.hand</comment>
            <translation>بعيد قليلًا لهذا التمرين. اقترب بمقدار عرض كفك تقريبًا.</translation>
        </message>
        <message>
            <source>Done at about {cm} cm from the screen; {asked} cm were asked for.</source>
            <comment>seat.done</comment>
            <translation>أُنجز على بعد نحو {cm} سم من الشاشة، والمطلوب {asked} سم.</translation>
        </message>
        <message>
            <source>This is only a rough figure.</source>
            <comment>seat.rough</comment>
            <translation>هذا رقم تقريبي فقط.</translation>
        </message>
        <message>
            <source>If you can't move, go on as you sit.</source>
            <comment>seat.told</comment>
            <translation>إن لم تستطع التحرك فتابع كما تجلس.</translation>
        </message>
        <message>
            <source>Close this note</source>
            <comment>second.close</comment>
            <translation>إغلاق هذا التنبيه</translation>
        </message>
        <message>
            <source>Turnpost is open already</source>
            <comment>second.title</comment>
            <translation>Turnpost مفتوح من قبل</translation>
        </message>
        <message>
            <source>Look for its other window and go on there. Nothing is lost.</source>
            <comment>second.what</comment>
            <translation>ابحث عن نافذته الأخرى وتابع هناك. لم يضع شيء.</translation>
        </message>
        <message>
            <source>Repeat the set-up</source>
            <comment>setup.again</comment>
            <translation>إعادة الإعداد</translation>
        </message>
        <message>
            <source>The set-up did not work.</source>
            <comment>setup.failed</comment>
            <translation>لم ينجح الإعداد.</translation>
        </message>
        <message>
            <source>far enough</source>
            <comment>setup.far_enough</comment>
            <translation>هذا يكفي</translation>
        </message>
        <message>
            <source>Thank you. Working out your measures ...</source>
            <comment>setup.fitting</comment>
            <translation>شكرًا. يجري حساب قياساتك ...</translation>
        </message>
        <message>
            <source>This takes a few seconds. Rest your eyes.</source>
            <comment>setup.fitting_wait</comment>
            <translation>يستغرق هذا بضع ثوانٍ. أرح عينيك.</translation>
        </message>
        <message>
            <source>Follow the target with your eyes. Keep your head still.</source>
            <comment>setup.look</comment>
            <translation>اتبع الهدف بعينيك. أبقِ رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Look at the left note on the wall. Keep your head still.</source>
            <comment>setup.look.left</comment>
            <translation>انظر إلى الورقة اليسرى على الجدار. أبقِ رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Look at the lower note on the wall. Keep your head still.</source>
            <comment>setup.look.lower</comment>
            <translation>انظر إلى الورقة السفلى على الجدار. أبقِ رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Look at the note on the wall. Keep your head still.</source>
            <comment>setup.look.note</comment>
            <translation>انظر إلى الورقة التي على الجدار. أبقِ رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Look at the right note on the wall. Keep your head still.</source>
            <comment>setup.look.right</comment>
            <translation>انظر إلى الورقة اليمنى على الجدار. أبقِ رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Look at the upper note on the wall. Keep your head still.</source>
            <comment>setup.look.upper</comment>
            <translation>انظر إلى الورقة العليا على الجدار. أبقِ رأسك ثابتًا.</translation>
        </message>
        <message>
            <source>Nod slowly up, then down. Keep your eyes on the target.</source>
            <comment>setup.nod_slowly</comment>
            <translation>حرّك رأسك ببطء إلى الأعلى، ثم إلى الأسفل. أبقِ عينيك على الهدف.</translation>
        </message>
        <message>
            <source>back to the middle</source>
            <comment>setup.nod_slowly.back</comment>
            <translation>عودة إلى الوسط</translation>
        </message>
        <message>
            <source>slowly down</source>
            <comment>setup.nod_slowly.minus</comment>
            <translation>ببطء إلى الأسفل</translation>
        </message>
        <message>
            <source>slowly up</source>
            <comment>setup.nod_slowly.plus</comment>
            <translation>ببطء إلى الأعلى</translation>
        </message>
        <message>
            <source>Set-up, part {part} of {parts}</source>
            <comment>setup.progress</comment>
            <translation>الإعداد، الجزء {part} من {parts}</translation>
        </message>
        <message>
            <source>Getting ready ...</source>
            <comment>setup.ready</comment>
            <translation>جارٍ التجهيز ...</translation>
        </message>
        <message>
            <source>Keep still and look at the target.</source>
            <comment>setup.rest</comment>
            <translation>ابقَ ثابتًا وانظر إلى الهدف.</translation>
        </message>
        <message>
            <source>Set-up done.</source>
            <comment>setup.shortened</comment>
            <translation>تم الإعداد.</translation>
        </message>
        <message>
            <source>Next: {what}</source>
            <comment>setup.soon</comment>
            <translation>التالي: {what}</translation>
        </message>
        <message>
            <source>Stop</source>
            <comment>setup.stop</comment>
            <translation>إيقاف</translation>
        </message>
        <message>
            <source>Set-up</source>
            <comment>setup.title</comment>
            <translation>الإعداد</translation>
        </message>
        <message>
            <source>The set-up is done. This could be better:</source>
            <comment>setup.told</comment>
            <translation>انتهى الإعداد. هذا يمكن أن يكون أفضل:</translation>
        </message>
        <message>
            <source>Turn your head slowly right, then left. Keep your eyes on the target.</source>
            <comment>setup.turn_slowly</comment>
            <translation>أدر رأسك ببطء إلى اليمين، ثم إلى اليسار. أبقِ عينيك على الهدف.</translation>
        </message>
        <message>
            <source>back to the middle</source>
            <comment>setup.turn_slowly.back</comment>
            <translation>عودة إلى الوسط</translation>
        </message>
        <message>
            <source>slowly to the left</source>
            <comment>setup.turn_slowly.minus</comment>
            <translation>ببطء إلى اليسار</translation>
        </message>
        <message>
            <source>slowly to the right</source>
            <comment>setup.turn_slowly.plus</comment>
            <translation>ببطء إلى اليمين</translation>
        </message>
        <message>
            <source>After the last set: {scores}</source>
            <comment>share.after</comment>
            <translation>بعد آخر مجموعة: {scores}</translation>
        </message>
        <message>
            <source>asked: {what}</source>
            <comment>share.asked</comment>
            <translation>المطلوب: {what}</translation>
        </message>
        <message>
            <source>Before: {scores}</source>
            <comment>share.before</comment>
            <translation>قبل: {scores}</translation>
        </message>
        <message>
            <source>Call</source>
            <comment>share.call</comment>
            <translation>مكالمة</translation>
        </message>
        <message>
            <source>Record this call only if everyone in it has agreed.</source>
            <comment>share.consent</comment>
            <translation>لا تسجل هذه المكالمة إلا إذا وافق كل من فيها.</translation>
        </message>
        <message>
            <source>{value} degrees</source>
            <comment>share.degrees</comment>
            <translation>{value} درجة</translation>
        </message>
        <message>
            <source>done</source>
            <comment>share.done</comment>
            <translation>تم</translation>
        </message>
        <message>
            <source>Down</source>
            <comment>share.down</comment>
            <translation>الأسفل</translation>
        </message>
        <message>
            <source>In the call only this window is seen, not you. To stand you need a helper in the room, or a second device that shows you.</source>
            <comment>share.helper</comment>
            <translation>في المكالمة تُرى هذه النافذة فقط، لا أنت. للوقوف تحتاج إلى شخص يساعدك في الغرفة، أو إلى جهاز ثانٍ يُظهرك.</translation>
        </message>
        <message>
            <source>No picture while you share</source>
            <comment>share.hidden</comment>
            <translation>لا صورة أثناء المشاركة</translation>
        </message>
        <message>
            <source>Hide outline (P)</source>
            <comment>share.hide</comment>
            <translation>إخفاء الحدود (P)</translation>
        </message>
        <message>
            <source>Left</source>
            <comment>share.left</comment>
            <translation>اليسار</translation>
        </message>
        <message>
            <source>{time} left</source>
            <comment>share.left_s</comment>
            <translation>بقي {time}</translation>
        </message>
        <message>
            <source>Figures for the call</source>
            <comment>share.name</comment>
            <translation>أرقام للمكالمة</translation>
        </message>
        <message>
            <source>Symptoms: not asked yet</source>
            <comment>share.no_scores</comment>
            <translation>الأعراض: لم يُسأل عنها بعد</translation>
        </message>
        <message>
            <source>Not saved.</source>
            <comment>share.not_saved</comment>
            <translation>لم تُحفظ.</translation>
        </message>
        <message>
            <source>of {goal}</source>
            <comment>share.of</comment>
            <translation>من {goal}</translation>
        </message>
        <message>
            <source>Layout for a video call (F4)</source>
            <comment>share.open</comment>
            <translation>عرض لمكالمة الفيديو (F4)</translation>
        </message>
        <message>
            <source>Outline of your head, as in a mirror</source>
            <comment>share.outline</comment>
            <translation>حدود رأسك، كما في المرآة</translation>
        </message>
        <message>
            <source>This plan can't be used. End the sharing layout to read why.</source>
            <comment>share.plan_bad</comment>
            <translation>لا يمكن استخدام هذه الخطة. أنهِ عرض المكالمة لتقرأ السبب.</translation>
        </message>
        <message>
            <source>Right</source>
            <comment>share.right</comment>
            <translation>اليمين</translation>
        </message>
        <message>
            <source>Saved.</source>
            <comment>share.saved</comment>
            <translation>حُفظت.</translation>
        </message>
        <message>
            <source>dizziness {value}</source>
            <comment>share.score.dizziness</comment>
            <translation>الدوخة {value}</translation>
        </message>
        <message>
            <source>nausea {value}</source>
            <comment>share.score.nausea</comment>
            <translation>الغثيان {value}</translation>
        </message>
        <message>
            <source>unsteadiness {value}</source>
            <comment>share.score.unsteadiness</comment>
            <translation>عدم الثبات {value}</translation>
        </message>
        <message>
            <source>Show outline (P)</source>
            <comment>share.show</comment>
            <translation>إظهار الحدود (P)</translation>
        </message>
        <message>
            <source>{value} a second</source>
            <comment>share.speed</comment>
            <translation>{value} في الثانية</translation>
        </message>
        <message>
            <source>{tempo} beats a minute</source>
            <comment>share.tempo</comment>
            <translation>{tempo} نقرة في الدقيقة</translation>
        </message>
        <message>
            <source>now: {tempo} a minute</source>
            <comment>share.tempo_now</comment>
            <translation>الآن: {tempo} في الدقيقة</translation>
        </message>
        <message>
            <source>not seen</source>
            <comment>share.unseen</comment>
            <translation>لا يُرى</translation>
        </message>
        <message>
            <source>Up</source>
            <comment>share.up</comment>
            <translation>الأعلى</translation>
        </message>
        <message>
            <source>Practise {n} times a day</source>
            <comment>sheet.bouts</comment>
            <translation>تمرّن، عدد المرات في اليوم {n}</translation>
        </message>
        <message>
            <source>Practise once a day</source>
            <comment>sheet.bouts.one</comment>
            <translation>تمرّن مرة في اليوم</translation>
        </message>
        <message>
            <source>Do not practise, and call your therapist first, if:</source>
            <comment>sheet.call</comment>
            <translation>لا تتمرن، واتصل بمعالجك أولًا، إذا:</translation>
        </message>
        <message>
            <source>on {n} days a week</source>
            <comment>sheet.days</comment>
            <translation>عدد الأيام في الأسبوع {n}</translation>
        </message>
        <message>
            <source>every day</source>
            <comment>sheet.days.all</comment>
            <translation>كل يوم</translation>
        </message>
        <message>
            <source>Call {number} at once if this is new:</source>
            <comment>sheet.emergency</comment>
            <translation>اتصل بالرقم {number} فورًا إذا ظهر شيء من هذا:</translation>
        </message>
        <message>
            <source>Call for emergency help at once if this is new:</source>
            <comment>sheet.emergency.no_number</comment>
            <translation>اتصل بالطوارئ فورًا إذا ظهر شيء من هذا:</translation>
        </message>
        <message>
            <source>Exercises</source>
            <comment>sheet.exercises</comment>
            <translation>التمارين</translation>
        </message>
        <message>
            <source>Plan {plan}, week {week}</source>
            <comment>sheet.foot</comment>
            <translation>الخطة {plan}، الأسبوع {week}</translation>
        </message>
        <message>
            <source>For {person}, week {week}</source>
            <comment>sheet.for</comment>
            <translation>إلى {person}، الأسبوع {week}</translation>
        </message>
        <message>
            <source>Week {week}</source>
            <comment>sheet.for_nobody</comment>
            <translation>الأسبوع {week}</translation>
        </message>
        <message>
            <source>en</source>
            <comment>sheet.language</comment>
            <translation>ar</translation>
        </message>
        <message>
            <source>Later, when your therapist says so:</source>
            <comment>sheet.later</comment>
            <translation>لاحقًا، عندما يقول معالجك ذلك:</translation>
        </message>
        <message>
            <source>Your neck: turn or tilt your head {turn} degrees at most to each side. Nod {nod} degrees at most up and down.</source>
            <comment>sheet.neck</comment>
            <translation>رقبتك: أدر رأسك أو أمِله {turn} درجة على الأكثر إلى كل جانب. وأومئ {nod} درجة على الأكثر إلى أعلى وأسفل.</translation>
        </message>
        <message>
            <source>{bouts}, {days}. {rest}</source>
            <comment>sheet.often</comment>
            <translation>{bouts}، {days}. {rest}</translation>
        </message>
        <message>
            <source>at your own pace</source>
            <comment>sheet.own_pace</comment>
            <translation>بسرعتك أنت</translation>
        </message>
        <message>
            <source>Page {number} of {pages}</source>
            <comment>sheet.page</comment>
            <translation>الصفحة {number} من {pages}</translation>
        </message>
        <message>
            <source>Drawing: {name}</source>
            <comment>sheet.picture</comment>
            <translation>رسم: {name}</translation>
        </message>
        <message>
            <source>From a firm chair</source>
            <comment>sheet.posture.chair</comment>
            <translation>من كرسي ثابت</translation>
        </message>
        <message>
            <source>Sitting on a firm chair</source>
            <comment>sheet.posture.sitting</comment>
            <translation>جالسًا على كرسي ثابت</translation>
        </message>
        <message>
            <source>Standing</source>
            <comment>sheet.posture.standing</comment>
            <translation>واقفًا</translation>
        </message>
        <message>
            <source>Walking</source>
            <comment>sheet.posture.walking</comment>
            <translation>ماشيًا</translation>
        </message>
        <message>
            <source>up to {most} degrees to each side</source>
            <comment>sheet.range</comment>
            <translation>حتى {most} درجة إلى كل جانب</translation>
        </message>
        <message>
            <source>up to {most} degrees up and down</source>
            <comment>sheet.range.nod</comment>
            <translation>حتى {most} درجة إلى أعلى وأسفل</translation>
        </message>
        <message>
            <source>Rest for {seconds} seconds after each exercise.</source>
            <comment>sheet.rest</comment>
            <translation>استرح {seconds} من الثواني بعد كل تمرين.</translation>
        </message>
        <message>
            <source>Only with the program, as something has to move on the screen:</source>
            <comment>sheet.screen</comment>
            <translation>مع البرنامج فقط، لأن شيئًا يجب أن يتحرك على الشاشة:</translation>
        </message>
        <message>
            <source>Stop for today when:</source>
            <comment>sheet.stop</comment>
            <translation>توقف لليوم عندما:</translation>
        </message>
        <message>
            <source>You are dizzier than {most} of 10. None at all is 0. As bad as it can be is 10.</source>
            <comment>sheet.stop.score.dizziness</comment>
            <translation>تشعر بدوخة أكثر من {most} من 10. لا دوخة هو 0. وأسوأ ما يمكن هو 10.</translation>
        </message>
        <message>
            <source>You feel sick, and more so than {most} of 10.</source>
            <comment>sheet.stop.score.nausea</comment>
            <translation>تشعر بغثيان أكثر من {most} من 10.</translation>
        </message>
        <message>
            <source>You feel unsteady, and more so than {most} of 10.</source>
            <comment>sheet.stop.score.unsteadiness</comment>
            <translation>تشعر بعدم ثبات أكثر من {most} من 10.</translation>
        </message>
        <message>
            <source>After an exercise your symptoms need more than {minutes} minutes to settle.</source>
            <comment>sheet.stop.settle</comment>
            <translation>بعد تمرين تحتاج الأعراض إلى أكثر من {minutes} من الدقائق لتهدأ.</translation>
        </message>
        <message>
            <source>{what}. Hold on, sit still until it is over, and tell your therapist.</source>
            <comment>sheet.stop.spin</comment>
            <translation>{what}. أمسك بشيء، واجلس ثابتًا حتى ينتهي، وأخبر معالجك.</translation>
        </message>
        <message>
            <source>You feel unwell in any other way.</source>
            <comment>sheet.stop.unwell</comment>
            <translation>تشعر بسوء بأي شكل آخر.</translation>
        </message>
        <message>
            <source>You are as dizzy as you can imagine.</source>
            <comment>sheet.stop.worst.dizziness</comment>
            <translation>تشعر بأشد دوخة يمكنك تخيلها.</translation>
        </message>
        <message>
            <source>You feel as sick as you can imagine.</source>
            <comment>sheet.stop.worst.nausea</comment>
            <translation>تشعر بأشد غثيان يمكنك تخيله.</translation>
        </message>
        <message>
            <source>You feel as unsteady as you can imagine.</source>
            <comment>sheet.stop.worst.unsteadiness</comment>
            <translation>تشعر بأشد عدم ثبات يمكنك تخيله.</translation>
        </message>
        <message>
            <source>Stand with a corner behind you and a firm chair in front.</source>
            <comment>sheet.support.corner_and_chair</comment>
            <translation>قف وخلفك ركن وأمامك كرسي ثابت.</translation>
        </message>
        <message>
            <source>Only with a helper who is close enough to hold you.</source>
            <comment>sheet.support.helper</comment>
            <translation>فقط مع شخص يساعدك ويكون قريبًا منك بحيث تصل يده إليك ليمسك بك.</translation>
        </message>
        <message>
            <source>{tempo} moves a minute</source>
            <comment>sheet.tempo</comment>
            <translation>{tempo} حركة في الدقيقة</translation>
        </message>
        <message>
            <source>first {low} moves a minute, at the end {high}</source>
            <comment>sheet.tempo.changes</comment>
            <translation>أولًا {low} حركة في الدقيقة، وفي النهاية {high}</translation>
        </message>
        <message>
            <source>Your exercises at home</source>
            <comment>sheet.title</comment>
            <translation>تمارينك في البيت</translation>
        </message>
        <message>
            <source>From your therapist</source>
            <comment>sheet.words</comment>
            <translation>من معالجك</translation>
        </message>
        <message>
            <source>With your eyes shut, or standing, sound leads you whatever you choose here.</source>
            <comment>sound.always</comment>
            <translation>عندما تكون عيناك مغمضتين، أو عندما تقف، يقودك الصوت مهما اخترت هنا.</translation>
        </message>
        <message>
            <source>Without sound, practice with your eyes shut or standing needs somebody who reads to you.</source>
            <comment>sound.always.none</comment>
            <translation>من دون صوت تحتاج التمارين والعينان مغمضتان، أو في أثناء الوقوف، إلى شخص يقرأ لك.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>sound.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>Beats only</source>
            <comment>sound.beats</comment>
            <translation>نقرات فقط</translation>
        </message>
        <message>
            <source>After a sudden drop of your head the voice always asks how you are.</source>
            <comment>sound.fall</comment>
            <translation>بعد هبوط مفاجئ لرأسك يسألك الصوت دائمًا عن حالك.</translation>
        </message>
        <message>
            <source>This computer can't play a sound.</source>
            <comment>sound.none</comment>
            <translation>لا يستطيع هذا الحاسوب تشغيل الصوت.</translation>
        </message>
        <message>
            <source>Sound: voice, beats or none (Ctrl+M)</source>
            <comment>sound.open</comment>
            <translation>الصوت: كلام أو نقرات أو لا شيء (Ctrl+M)</translation>
        </message>
        <message>
            <source>A screen reader seems to be on. It says the words, and the voice is quiet unless your eyes are shut.</source>
            <comment>sound.reader</comment>
            <translation>يبدو أن قارئ شاشة يعمل. هو يقرأ الكلمات، ويصمت الصوت إلا عندما تكون عيناك مغمضتين.</translation>
        </message>
        <message>
            <source>Your choice holds while you sit with your eyes open. What is said also stands on the screen.</source>
            <comment>sound.seated</comment>
            <translation>يسري اختيارك ما دمت جالسًا وعيناك مفتوحتان. وما يُقال يظهر أيضًا على الشاشة.</translation>
        </message>
        <message>
            <source>Nothing</source>
            <comment>sound.silence</comment>
            <translation>لا شيء</translation>
        </message>
        <message>
            <source>What do you want to hear?</source>
            <comment>sound.title</comment>
            <translation>ماذا تريد أن تسمع؟</translation>
        </message>
        <message>
            <source>Let me hear it</source>
            <comment>sound.try</comment>
            <translation>أسمعني</translation>
        </message>
        <message>
            <source>Voice and beats</source>
            <comment>sound.voice</comment>
            <translation>كلام ونقرات</translation>
        </message>
        <message>
            <source>Begin anew</source>
            <comment>stored.anew</comment>
            <translation>ابدأ من جديد</translation>
        </message>
        <message>
            <source>Delete everything that Turnpost has stored here, for good?</source>
            <comment>stored.ask.everything</comment>
            <translation>هل يُحذف نهائيًا كل ما حفظه Turnpost هنا؟</translation>
        </message>
        <message>
            <source>Delete the shape and look of your face for good?</source>
            <comment>stored.ask.faces</comment>
            <translation>هل يُحذف شكل وجهك وملامحه نهائيًا؟</translation>
        </message>
        <message>
            <source>Delete this session for good? {when}</source>
            <comment>stored.ask.one</comment>
            <translation>هل تُحذف هذه الجلسة نهائيًا؟ {when}</translation>
        </message>
        <message>
            <source>Delete all your sessions for good? There are {count} ({size}).</source>
            <comment>stored.ask.sessions</comment>
            <translation>هل تُحذف كل جلساتك نهائيًا؟ عددها {count} ({size}).</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>stored.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <comment>stored.copy</comment>
            <translation>احفظ نسخة</translation>
        </message>
        <message>
            <source>All of it</source>
            <comment>stored.copy.everything</comment>
            <translation>من كل شيء</translation>
        </message>
        <message>
            <source>The shape of my face</source>
            <comment>stored.copy.faces</comment>
            <translation>من شكل وجهي</translation>
        </message>
        <message>
            <source>Choose the place</source>
            <comment>stored.copy.go</comment>
            <translation>اختر المكان</translation>
        </message>
        <message>
            <source>The session that is being recorded now is not in it.</source>
            <comment>stored.copy.in_use</comment>
            <translation>الجلسة التي تُسجَّل الآن ليست فيها.</translation>
        </message>
        <message>
            <source>A copy of all of it also holds the clinic's keys, locked by their passphrase. Keep such a copy where nobody else gets at it.</source>
            <comment>stored.copy.keys</comment>
            <translation>النسخة من كل شيء تحوي أيضًا مفاتيح العيادة، مقفلة بعبارة المرور. احفظ هذه النسخة حيث لا يصل إليها أحد غيرك.</translation>
        </message>
        <message>
            <source>Zip files (*.zip)</source>
            <comment>stored.copy.kinds</comment>
            <translation>ملفات zip (*.zip)</translation>
        </message>
        <message>
            <source>The copy is saved, and it is not encrypted: {path}</source>
            <comment>stored.copy.made</comment>
            <translation>حُفظت النسخة، وهي غير مشفّرة: {path}</translation>
        </message>
        <message>
            <source>Saving the copy ...</source>
            <comment>stored.copy.making</comment>
            <translation>يجري حفظ النسخة ...</translation>
        </message>
        <message>
            <source>The copy is one ordinary file (zip). It is not encrypted: whoever gets it can read it.</source>
            <comment>stored.copy.open</comment>
            <translation>النسخة ملف عادي واحد (zip). وهي غير مشفّرة: كل من تصل إليه يستطيع قراءتها.</translation>
        </message>
        <message>
            <source>The sessions</source>
            <comment>stored.copy.sessions</comment>
            <translation>من الجلسات</translation>
        </message>
        <message>
            <source>What do you want a copy of?</source>
            <comment>stored.copy.what</comment>
            <translation>ممَّ تريد نسخة؟</translation>
        </message>
        <message>
            <source>Where shall the copy be?</source>
            <comment>stored.copy.where</comment>
            <translation>أين تريد النسخة؟</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <comment>stored.days</comment>
            <translation>من {first} إلى {last}</translation>
        </message>
        <message>
            <source>Delete everything</source>
            <comment>stored.delete.everything</comment>
            <translation>احذف كل شيء</translation>
        </message>
        <message>
            <source>Delete the shape of my face</source>
            <comment>stored.delete.faces</comment>
            <translation>احذف شكل وجهي</translation>
        </message>
        <message>
            <source>Delete one session</source>
            <comment>stored.delete.one</comment>
            <translation>احذف جلسة واحدة</translation>
        </message>
        <message>
            <source>Delete all sessions</source>
            <comment>stored.delete.sessions</comment>
            <translation>احذف كل الجلسات</translation>
        </message>
        <message>
            <source>It is deleted.</source>
            <comment>stored.deleted</comment>
            <translation>تم الحذف.</translation>
        </message>
        <message>
            <source>All of it is deleted. Turnpost now begins as on its first day.</source>
            <comment>stored.deleted.everything</comment>
            <translation>حُذف كل شيء. ويبدأ Turnpost الآن كما في يومه الأول.</translation>
        </message>
        <message>
            <source>Not all of it is deleted.</source>
            <comment>stored.deleted.in_part</comment>
            <translation>لم يُحذف كل شيء.</translation>
        </message>
        <message>
            <source>Deleting ...</source>
            <comment>stored.deleting</comment>
            <translation>يجري الحذف ...</translation>
        </message>
        <message>
            <source>These lie in another place and are never deleted from here: {names}</source>
            <comment>stored.elsewhere</comment>
            <translation>هذه موجودة في مكان آخر ولا تُحذف من هنا أبدًا: {names}</translation>
        </message>
        <message>
            <source>left eye only</source>
            <comment>stored.eye.left</comment>
            <translation>العين اليسرى فقط</translation>
        </message>
        <message>
            <source>right eye only</source>
            <comment>stored.eye.right</comment>
            <translation>العين اليمنى فقط</translation>
        </message>
        <message>
            <source>Glasses: {worn}. Camera: {camera}.</source>
            <comment>stored.face</comment>
            <translation>النظارة: {worn}. الكاميرا: {camera}.</translation>
        </message>
        <message>
            <source>Glasses: {worn}.</source>
            <comment>stored.face_worn</comment>
            <translation>النظارة: {worn}.</translation>
        </message>
        <message>
            <source>That did not work: {why}</source>
            <comment>stored.failed</comment>
            <translation>لم ينجح ذلك: {why}</translation>
        </message>
        <message>
            <source>All sessions (those of other people, too), the shape of your face, the copy of your plan, all measures and all that you chose go. Turnpost is then as on its first day.</source>
            <comment>stored.goes.everything</comment>
            <translation>تُحذف كل الجلسات (وجلسات الأشخاص الآخرين أيضًا) وشكل وجهك ونسخة خطتك وكل القياسات وكل ما اخترته. ثم يصبح Turnpost كما كان في يومه الأول.</translation>
        </message>
        <message>
            <source>Before you practise again you do the whole set-up once more.</source>
            <comment>stored.goes.faces</comment>
            <translation>قبل أن تتمرّن مرة أخرى تقوم بالإعداد كله من جديد.</translation>
        </message>
        <message>
            <source>The clinic's keys go, too. Without a backup of them nobody can open what patients hand over.</source>
            <comment>stored.goes.keys</comment>
            <translation>وتُحذف مفاتيح العيادة أيضًا. ومن دون نسخة احتياطية منها لا يستطيع أحد فتح ما يسلّمه المرضى.</translation>
        </message>
        <message>
            <source>What is deleted no longer counts for your plan, and you can't hand it over any more.</source>
            <comment>stored.goes.sessions</comment>
            <translation>ما يُحذف لا يُحسب بعد ذلك لخطتك، ولا يمكنك تسليمه.</translation>
        </message>
        <message>
            <source>Keep it</source>
            <comment>stored.keep</comment>
            <translation>أبقِه</translation>
        </message>
        <message>
            <source>Sessions that broke off and are not saved yet</source>
            <comment>stored.kind.broken_off</comment>
            <translation>جلسات انقطعت ولم تُحفظ بعد</translation>
        </message>
        <message>
            <source>What was measured of your camera</source>
            <comment>stored.kind.cameras</comment>
            <translation>ما قيس من الكاميرا</translation>
        </message>
        <message>
            <source>An index for the therapist's desk</source>
            <comment>stored.kind.desk_index</comment>
            <translation>فهرس لمكتب المعالج</translation>
        </message>
        <message>
            <source>The shape and look of your face, as numbers</source>
            <comment>stored.kind.faces</comment>
            <translation>شكل وجهك وملامحه، على هيئة أرقام</translation>
        </message>
        <message>
            <source>Which sessions you handed over</source>
            <comment>stored.kind.handed_over</comment>
            <translation>أي الجلسات سلّمتها</translation>
        </message>
        <message>
            <source>The keys of a clinic, locked</source>
            <comment>stored.kind.keys</comment>
            <translation>مفاتيح عيادة، مقفلة</translation>
        </message>
        <message>
            <source>Notes of a therapist</source>
            <comment>stored.kind.notes</comment>
            <translation>ملاحظات معالج</translation>
        </message>
        <message>
            <source>A copy of your plan</source>
            <comment>stored.kind.plans</comment>
            <translation>نسخة من خطتك</translation>
        </message>
        <message>
            <source>Sessions of other people</source>
            <comment>stored.kind.received</comment>
            <translation>جلسات أشخاص آخرين</translation>
        </message>
        <message>
            <source>Remains of something that broke off</source>
            <comment>stored.kind.remains</comment>
            <translation>بقايا شيء انقطع</translation>
        </message>
        <message>
            <source>Your sessions, with all that was measured, answered and scored</source>
            <comment>stored.kind.sessions</comment>
            <translation>جلساتك، مع كل ما قيس وأُجيب عنه وقُيّم</translation>
        </message>
        <message>
            <source>What you chose: text, language, sound</source>
            <comment>stored.kind.settings</comment>
            <translation>ما اخترته: النص واللغة والصوت</translation>
        </message>
        <message>
            <source>This could not be deleted: {what}</source>
            <comment>stored.left</comment>
            <translation>تعذّر حذف هذا: {what}</translation>
        </message>
        <message>
            <source>it is being recorded now</source>
            <comment>stored.left.in_use</comment>
            <translation>تُسجَّل الآن</translation>
        </message>
        <message>
            <source>{path} ({why})</source>
            <comment>stored.left.row</comment>
            <translation>{path} ({why})</translation>
        </message>
        <message>
            <source>Looking at what is stored ...</source>
            <comment>stored.looking</comment>
            <translation>يجري النظر في ما هو محفوظ ...</translation>
        </message>
        <message>
            <source>Newer ones</source>
            <comment>stored.newer</comment>
            <translation>الأحدث</translation>
        </message>
        <message>
            <source>This can't be undone. Copies that you handed over or saved elsewhere stay where they are. An expert may still be able to read parts of deleted files from the disk.</source>
            <comment>stored.no_way_back</comment>
            <translation>لا يمكن التراجع عن هذا. النسخ التي سلّمتها أو حفظتها في مكان آخر تبقى في مكانها. وقد يستطيع خبير أن يقرأ من القرص أجزاء من الملفات المحذوفة.</translation>
        </message>
        <message>
            <source>Nothing is stored.</source>
            <comment>stored.nothing</comment>
            <translation>لا شيء محفوظ.</translation>
        </message>
        <message>
            <source>Older ones</source>
            <comment>stored.older</comment>
            <translation>الأقدم</translation>
        </message>
        <message>
            <source>What is stored here</source>
            <comment>stored.open</comment>
            <translation>ما هو محفوظ هنا</translation>
        </message>
        <message>
            <source>This folder also holds things that Turnpost did not put there. They always stay: {names}</source>
            <comment>stored.others</comment>
            <translation>في هذا المجلد أيضًا أشياء لم يضعها Turnpost. وهي تبقى دائمًا: {names}</translation>
        </message>
        <message>
            <source>{what}: {count} ({days}), {size}.</source>
            <comment>stored.row</comment>
            <translation>{what}: {count} ({days})، {size}.</translation>
        </message>
        <message>
            <source>{what} ({days}), {size}.</source>
            <comment>stored.row_one</comment>
            <translation>{what} ({days})، {size}.</translation>
        </message>
        <message>
            <source>{day}, {time} ({size})</source>
            <comment>stored.session</comment>
            <translation>{day}، {time} ({size})</translation>
        </message>
        <message>
            <source>{session}, broken off</source>
            <comment>stored.session.broken_off</comment>
            <translation>{session}، انقطعت</translation>
        </message>
        <message>
            <source>{size} kB</source>
            <comment>stored.size.kb</comment>
            <translation>{size} كيلوبايت</translation>
        </message>
        <message>
            <source>{size} MB</source>
            <comment>stored.size.mb</comment>
            <translation>{size} ميغابايت</translation>
        </message>
        <message>
            <source>Delete this one</source>
            <comment>stored.this</comment>
            <translation>احذف هذه</translation>
        </message>
        <message>
            <source>What is stored on this computer</source>
            <comment>stored.title</comment>
            <translation>ما هو محفوظ على هذا الحاسوب</translation>
        </message>
        <message>
            <source>not known</source>
            <comment>stored.unknown</comment>
            <translation>غير معروفة</translation>
        </message>
        <message>
            <source>They lie in this folder: {folder}</source>
            <comment>stored.where</comment>
            <translation>وهي في هذا المجلد: {folder}</translation>
        </message>
        <message>
            <source>Which session do you want to delete?</source>
            <comment>stored.which</comment>
            <translation>أي جلسة تريد حذفها؟</translation>
        </message>
        <message>
            <source>Other accounts on this computer may be able to read these files. They are not encrypted, unless the disk is. Whoever helps you with the computer can close the folder to others.</source>
            <comment>stored.who.others</comment>
            <translation>قد تستطيع حسابات أخرى على هذا الحاسوب قراءة هذه الملفات. وهي غير مشفّرة، إلا إذا كان القرص مشفّرًا. من يساعدك في الحاسوب يستطيع إغلاق المجلد أمام الآخرين.</translation>
        </message>
        <message>
            <source>Only your own account on this computer can read these files, and an administrator's. They are not encrypted, unless the disk is.</source>
            <comment>stored.who.own</comment>
            <translation>حسابك وحده على هذا الحاسوب يستطيع قراءة هذه الملفات، وحساب المسؤول عنه. وهي غير مشفّرة، إلا إذا كان القرص مشفّرًا.</translation>
        </message>
        <message>
            <source>Turnpost can't tell which accounts on this computer can read these files. They are not encrypted, unless the disk is.</source>
            <comment>stored.who.unknown</comment>
            <translation>لا يستطيع Turnpost معرفة الحسابات التي تستطيع قراءة هذه الملفات على هذا الحاسوب. وهي غير مشفّرة، إلا إذا كان القرص مشفّرًا.</translation>
        </message>
        <message>
            <source>Delete for good</source>
            <comment>stored.yes</comment>
            <translation>احذف نهائيًا</translation>
        </message>
        <message>
            <source>Practise again</source>
            <comment>summary.again</comment>
            <translation>التمرين مرة أخرى</translation>
        </message>
        <message>
            <source>asked: {asked}</source>
            <comment>summary.asked</comment>
            <translation>المطلوب: {asked}</translation>
        </message>
        <message>
            <source>To show it to your therapist, bring this computer, or a copy of that folder.</source>
            <comment>summary.bring</comment>
            <translation>لعرضه على معالجك، أحضر هذا الحاسوب أو نسخة من ذلك المجلد.</translation>
        </message>
        <message>
            <source>Close</source>
            <comment>summary.close</comment>
            <translation>إغلاق</translation>
        </message>
        <message>
            <source>{value} degrees</source>
            <comment>summary.degrees</comment>
            <translation>{value}°</translation>
        </message>
        <message>
            <source>{low} to {high} degrees</source>
            <comment>summary.degrees_range</comment>
            <translation>من {low} إلى {high} درجة</translation>
        </message>
        <message>
            <source>{value} degrees a second</source>
            <comment>summary.degrees_s</comment>
            <translation>{value}° في الثانية</translation>
        </message>
        <message>
            <source>This was the sample clip, not you.</source>
            <comment>summary.demo</comment>
            <translation>كان هذا مقطع المثال، ولم تكن أنت.</translation>
        </message>
        <message>
            <source>What you practised before is saved, and so is what you answered.</source>
            <comment>summary.done_before</comment>
            <translation>ما تدربت عليه من قبل محفوظ، وكذلك ما أجبت به.</translation>
        </message>
        <message>
            <source>Down</source>
            <comment>summary.down</comment>
            <translation>إلى الأسفل</translation>
        </message>
        <message>
            <source>Time for each</source>
            <comment>summary.each</comment>
            <translation>زمن كل مرة</translation>
        </message>
        <message>
            <source>You did the whole exercise.</source>
            <comment>summary.finished</comment>
            <translation>أديت التمرين كله.</translation>
        </message>
        <message>
            <source>Your practice for now is done.</source>
            <comment>summary.finished_plan</comment>
            <translation>انتهى تمرينك الآن.</translation>
        </message>
        <message>
            <source>Noted as you say it. The camera did not see it, so nothing is measured.</source>
            <comment>summary.finished_reported</comment>
            <translation>سُجل كما تقول. لم تره الكاميرا، لذلك لم يُقس شيء.</translation>
        </message>
        <message>
            <source>To the first page</source>
            <comment>summary.first_page</comment>
            <translation>إلى الصفحة الأولى</translation>
        </message>
        <message>
            <source>Held</source>
            <comment>summary.held</comment>
            <translation>مدة الثبات</translation>
        </message>
        <message>
            <source>To the left</source>
            <comment>summary.left</comment>
            <translation>إلى اليسار</translation>
        </message>
        <message>
            <source>Left out</source>
            <comment>summary.left_out</comment>
            <translation>لم يُفعل</translation>
        </message>
        <message>
            <source>Measured</source>
            <comment>summary.measured</comment>
            <translation>ما قيس</translation>
        </message>
        <message>
            <source>Your set-up could not be kept ({why}). Next time you do it again; nothing else is lost.</source>
            <comment>summary.not_kept</comment>
            <translation>تعذر الاحتفاظ بإعدادك ({why}). ستعيده في المرة القادمة؛ ولم يضع شيء آخر.</translation>
        </message>
        <message>
            <source>not measured</source>
            <comment>summary.not_measured</comment>
            <translation>لم يُقس</translation>
        </message>
        <message>
            <source>not past the middle</source>
            <comment>summary.not_past</comment>
            <translation>لم يتجاوز المنتصف</translation>
        </message>
        <message>
            <source>Not saved: {why}</source>
            <comment>summary.not_saved</comment>
            <translation>لم تُحفظ: {why}</translation>
        </message>
        <message>
            <source>What you did is still here. Make room, or choose another place, before you close this window.</source>
            <comment>summary.not_saved_do</comment>
            <translation>ما فعلته ما زال هنا. أفسح مكانًا، أو اختر مكانًا آخر، قبل أن تغلق هذه النافذة.</translation>
        </message>
        <message>
            <source>It could not be taken back, so it still counts. {why}</source>
            <comment>summary.not_taken_back</comment>
            <translation>تعذّر التراجع عنه، لذلك ما زال محسوبًا. {why}</translation>
        </message>
        <message>
            <source>Nothing was practised this time. Why stands beside each exercise.</source>
            <comment>summary.nothing_done</comment>
            <translation>لم تتدرب على شيء هذه المرة. السبب مكتوب بجانب كل تمرين.</translation>
        </message>
        <message>
            <source>nothing to mention</source>
            <comment>summary.nothing_noticed</comment>
            <translation>لا شيء يُذكر</translation>
        </message>
        <message>
            <source>Nothing was practised this time. What you answered is saved.</source>
            <comment>summary.nothing_stopped</comment>
            <translation>لم تتدرب على شيء هذه المرة. إجاباتك محفوظة.</translation>
        </message>
        <message>
            <source>Noticed</source>
            <comment>summary.noticed</comment>
            <translation>ما لوحظ</translation>
        </message>
        <message>
            <source>{value} % of the time</source>
            <comment>summary.of_time</comment>
            <translation>{value} % من الوقت</translation>
        </message>
        <message>
            <source>Eyes on the target</source>
            <comment>summary.on_target</comment>
            <translation>العينان على الهدف</translation>
        </message>
        <message>
            <source>{count}, as you counted</source>
            <comment>summary.own_count</comment>
            <translation>{count}، كما عددت</translation>
        </message>
        <message>
            <source>{value} turns a minute</source>
            <comment>summary.per_minute</comment>
            <translation>{value} حركة في الدقيقة</translation>
        </message>
        <message>
            <source>Choose another place</source>
            <comment>summary.place</comment>
            <translation>اختيار مكان آخر</translation>
        </message>
        <message>
            <source>Repetitions</source>
            <comment>summary.repetitions</comment>
            <translation>عدد المرات</translation>
        </message>
        <message>
            <source>done, as you say</source>
            <comment>summary.reported</comment>
            <translation>تم، حسب قولك</translation>
        </message>
        <message>
            <source>Try again</source>
            <comment>summary.retry</comment>
            <translation>حاول مرة أخرى</translation>
        </message>
        <message>
            <source>To the right</source>
            <comment>summary.right</comment>
            <translation>إلى اليمين</translation>
        </message>
        <message>
            <source>Saved in {folder}</source>
            <comment>summary.saved</comment>
            <translation>حُفظت في {folder}</translation>
        </message>
        <message>
            <source>{value} seconds</source>
            <comment>summary.seconds</comment>
            <translation>{value} من الثواني</translation>
        </message>
        <message>
            <source>Fastest in a turn</source>
            <comment>summary.speed</comment>
            <translation>أسرع ما في الحركة</translation>
        </message>
        <message>
            <source>You stopped early. What you did is saved and counts.</source>
            <comment>summary.stopped</comment>
            <translation>توقفت قبل النهاية. ما فعلته محفوظ ومحسوب.</translation>
        </message>
        <message>
            <source>Take it back</source>
            <comment>summary.take_back</comment>
            <translation>تراجع</translation>
        </message>
        <message>
            <source>Tempo</source>
            <comment>summary.tempo</comment>
            <translation>الإيقاع</translation>
        </message>
        <message>
            <source>Your session</source>
            <comment>summary.title</comment>
            <translation>جلستك</translation>
        </message>
        <message>
            <source>This was only to try it out: it is not counted as practice.</source>
            <comment>summary.try</comment>
            <translation>كان هذا للتجربة فقط: لا يُحسب تمرينًا.</translation>
        </message>
        <message>
            <source>Stopped. What you did is saved.</source>
            <comment>summary.try_stopped</comment>
            <translation>انتهى. ما فعلته محفوظ.</translation>
        </message>
        <message>
            <source>How far your eyes turned in</source>
            <comment>summary.turned_in</comment>
            <translation>كم التفّت عيناك إلى الداخل</translation>
        </message>
        <message>
            <source>Up</source>
            <comment>summary.up</comment>
            <translation>إلى الأعلى</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <comment>switch_colours</comment>
            <translation>فاتح أو داكن</translation>
        </message>
        <message>
            <source>How dizzy are you now?</source>
            <comment>symptoms.not_answered</comment>
            <translation>كم تشعر بالدوخة الآن؟</translation>
        </message>
        <message>
            <source>It takes long to settle. It is enough for today.</source>
            <comment>symptoms.not_settled</comment>
            <translation>يطول الأمر حتى تهدأ. يكفي لليوم.</translation>
        </message>
        <message>
            <source>That was a lot. It is enough for today.</source>
            <comment>symptoms.score_above</comment>
            <translation>كان ذلك كثيرًا. يكفي لليوم.</translation>
        </message>
        <message>
            <source>Rest until you feel as usual.</source>
            <comment>symptoms.settling</comment>
            <translation>استرح حتى تشعر كالمعتاد.</translation>
        </message>
        <message>
            <source>Larger text</source>
            <comment>text_larger</comment>
            <translation>نص أكبر</translation>
        </message>
        <message>
            <source>Smaller text</source>
            <comment>text_smaller</comment>
            <translation>نص أصغر</translation>
        </message>
        <message>
            <source>it lies behind a link</source>
            <comment>told.behind_link</comment>
            <translation>موجود خلف رابط</translation>
        </message>
        <message>
            <source>{path}: could not be written ({why})</source>
            <comment>told.broke_off</comment>
            <translation>{path}: لم تمكن كتابته ({why})</translation>
        </message>
        <message>
            <source>its links lead round in a circle</source>
            <comment>told.circle</comment>
            <translation>روابطه تدور في حلقة</translation>
        </message>
        <message>
            <source>{path}: lies in the folder that is copied, and would be deleted with it; choose another place</source>
            <comment>told.copy_inside</comment>
            <translation>{path}: في المجلد الذي يُنسخ، وستُحذف معه؛ اختر مكانًا آخر</translation>
        </message>
        <message>
            <source>there is nothing to copy</source>
            <comment>told.copy_nothing</comment>
            <translation>لا شيء يُنسخ</translation>
        </message>
        <message>
            <source>the disk has a fault</source>
            <comment>told.disk_fault</comment>
            <translation>في القرص خلل</translation>
        </message>
        <message>
            <source>the disk is full</source>
            <comment>told.disk_full</comment>
            <translation>القرص ممتلئ</translation>
        </message>
        <message>
            <source>the disk is no longer connected</source>
            <comment>told.disk_gone</comment>
            <translation>القرص لم يعد موصولًا</translation>
        </message>
        <message>
            <source>the disk does not answer</source>
            <comment>told.disk_silent</comment>
            <translation>القرص لا يستجيب</translation>
        </message>
        <message>
            <source>{path}: the disk does not answer; try again in a moment</source>
            <comment>told.disk_wait</comment>
            <translation>{path}: القرص لا يستجيب؛ حاول مرة أخرى بعد لحظة</translation>
        </message>
        <message>
            <source>the measuring process ended while the set-up was being used</source>
            <comment>told.ended</comment>
            <translation>توقف القياس أثناء استخدام الإعداد</translation>
        </message>
        <message>
            <source>your eyes look another way than last time; do the whole set-up</source>
            <comment>told.eyes_other</comment>
            <translation>تبدو عيناك مختلفتين عن المرة الماضية؛ قم بالإعداد كله</translation>
        </message>
        <message>
            <source>the face is too dark or too blurred to be measured; more light helps</source>
            <comment>told.face_dark</comment>
            <translation>وجهك مظلم أو غير واضح بحيث لا يمكن قياسه؛ الضوء الأكثر يساعد</translation>
        </message>
        <message>
            <source>the face was not seen for long enough in the set-up; do it again</source>
            <comment>told.face_short</comment>
            <translation>لم يُرَ وجهك مدة كافية في الإعداد؛ أعد الإعداد</translation>
        </message>
        <message>
            <source>{path}: is there already; name another file</source>
            <comment>told.file_there</comment>
            <translation>{path}: موجود هناك من قبل؛ اختر اسم ملف آخر</translation>
        </message>
        <message>
            <source>its folder is gone</source>
            <comment>told.folder_gone</comment>
            <translation>مجلده لم يعد موجودًا</translation>
        </message>
        <message>
            <source>another program is using it</source>
            <comment>told.in_use</comment>
            <translation>برنامج آخر يستخدمه الآن</translation>
        </message>
        <message>
            <source>it is a folder</source>
            <comment>told.is_folder</comment>
            <translation>هو مجلد</translation>
        </message>
        <message>
            <source>this is another camera than that of the kept set-up; do the whole set-up</source>
            <comment>told.kept_camera</comment>
            <translation>هذه كاميرا غير كاميرا الإعداد السابق؛ قم بالإعداد كله</translation>
        </message>
        <message>
            <source>you sit much farther from the camera than in the kept set-up; do the whole set-up</source>
            <comment>told.kept_farther</comment>
            <translation>أنت أبعد بكثير عن الكاميرا مما كنت في الإعداد السابق؛ قم بالإعداد كله</translation>
        </message>
        <message>
            <source>you sit much nearer to the camera than in the kept set-up; do the whole set-up</source>
            <comment>told.kept_nearer</comment>
            <translation>أنت أقرب بكثير إلى الكاميرا مما كنت في الإعداد السابق؛ قم بالإعداد كله</translation>
        </message>
        <message>
            <source>the face was not seen for long enough; do the whole set-up</source>
            <comment>told.kept_short</comment>
            <translation>لم يُرَ وجهك مدة كافية؛ قم بالإعداد كله</translation>
        </message>
        <message>
            <source>the kept set-up does not fit this face or this light; do the whole set-up</source>
            <comment>told.kept_unlike</comment>
            <translation>الإعداد السابق لا يناسب هذا الوجه أو هذا الضوء؛ قم بالإعداد كله</translation>
        </message>
        <message>
            <source>the key would take too much memory to be opened; make it on another computer</source>
            <comment>told.key_heavy</comment>
            <translation>سيحتاج فتح المفتاح إلى ذاكرة أكثر من اللازم؛ أنشئه على حاسوب آخر</translation>
        </message>
        <message>
            <source>is a second copy of {path}, left out</source>
            <comment>told.left.copy</comment>
            <translation>نسخة ثانية من {path}، تُركت</translation>
        </message>
        <message>
            <source>is no file of this program</source>
            <comment>told.left.foreign</comment>
            <translation>ليس ملفًا من هذا البرنامج</translation>
        </message>
        <message>
            <source>is not a whole JSON file; is it still being copied?</source>
            <comment>told.left.half</comment>
            <translation>ليس ملف JSON كاملًا؛ هل ما زال يُنسخ؟</translation>
        </message>
        <message>
            <source>is too large for a file of this program</source>
            <comment>told.left.large</comment>
            <translation>أكبر من أن يكون ملفًا من هذا البرنامج</translation>
        </message>
        <message>
            <source>not a whole JSON file ({error})</source>
            <comment>told.left.no_json</comment>
            <translation>ليس ملف JSON، أو ليس كاملًا ({error})</translation>
        </message>
        <message>
            <source>is the same session as {path} with other content, left out; look which of them is right</source>
            <comment>told.left.other</comment>
            <translation>هي الجلسة نفسها التي في {path} بمحتوى آخر، تُركت؛ انظر أيهما الصحيحة</translation>
        </message>
        <message>
            <source>is a file that a patient has handed over: take it in ("Files in and out" at the desk, or 'turnpost receive'), then move it elsewhere; taken in twice it changes nothing</source>
            <comment>told.left.shut</comment>
            <translation>ملف سلّمه مريض: استلمه (في «ملفات واردة وصادرة»، أو بالأمر 'turnpost receive')، ثم انقله إلى مكان آخر؛ استلامه مرتين لا يغيّر شيئًا</translation>
        </message>
        <message>
            <source>is being written just now, or was a minute ago; look again soon</source>
            <comment>told.left.written</comment>
            <translation>يُكتب الآن، أو كان يُكتب قبل دقيقة؛ انظر ثانية بعد قليل</translation>
        </message>
        <message>
            <source>what was held up has another shape; use a flat, whole one</source>
            <comment>told.lens_shape</comment>
            <translation>ما رفعته له شكل آخر؛ استخدم شيئًا مستويًا كاملًا</translation>
        </message>
        <message>
            <source>it was held too square to the camera; tilt it more, to several sides</source>
            <comment>told.lens_square</comment>
            <translation>كانت مواجهة للكاميرا أكثر مما يجب؛ أمِلها أكثر، إلى عدة جهات</translation>
        </message>
        <message>
            <source>nothing was seen to measure; hold it up so that all four corners show</source>
            <comment>told.lens_unseen</comment>
            <translation>لم يُرَ شيء لقياسه؛ ارفعها بحيث تظهر الزوايا الأربع كلها</translation>
        </message>
        <message>
            <source>no webcam sees so wide or so narrow; measure again</source>
            <comment>told.lens_wide</comment>
            <translation>لا توجد كاميرا ترى بهذا الاتساع أو بهذا الضيق؛ قِس مرة أخرى</translation>
        </message>
        <message>
            <source>too many files are open</source>
            <comment>told.many_open</comment>
            <translation>عدد الملفات المفتوحة كبير جدًا</translation>
        </message>
        <message>
            <source>the mark would ask for a turn of {turn} degrees; put it farther in</source>
            <comment>told.mark_in</comment>
            <translation>تتطلب العلامة حركة مقدارها {turn} درجة؛ ضعها أقرب إلى الداخل</translation>
        </message>
        <message>
            <source>the mark would ask for a turn of {turn} degrees; put it farther out</source>
            <comment>told.mark_out</comment>
            <translation>تتطلب العلامة حركة مقدارها {turn} درجة؛ ضعها أبعد إلى الخارج</translation>
        </message>
        <message>
            <source>the computer has too little memory</source>
            <comment>told.memory</comment>
            <translation>ذاكرة الحاسوب لا تكفي</translation>
        </message>
        <message>
            <source>{path}: is a folder; name a file</source>
            <comment>told.name_file</comment>
            <translation>{path}: هو مجلد؛ اذكر اسم ملف</translation>
        </message>
        <message>
            <source>the name is too long</source>
            <comment>told.name_long</comment>
            <translation>الاسم طويل جدًا</translation>
        </message>
        <message>
            <source>something of this name is there already</source>
            <comment>told.name_taken</comment>
            <translation>يوجد هناك شيء بهذا الاسم من قبل</translation>
        </message>
        <message>
            <source>this name can't be used here</source>
            <comment>told.name_wrong</comment>
            <translation>لا يمكن استعمال هذا الاسم هنا</translation>
        </message>
        <message>
            <source>the place on the network does not answer</source>
            <comment>told.network_silent</comment>
            <translation>المكان على الشبكة لا يستجيب</translation>
        </message>
        <message>
            <source>{path}: was written by a newer version of this program; update it</source>
            <comment>told.newer</comment>
            <translation>{path}: كتبه إصدار أحدث من هذا البرنامج؛ حدّث البرنامج</translation>
        </message>
        <message>
            <source>a newer version of this program wrote it</source>
            <comment>told.newer_wrote</comment>
            <translation>كتبه إصدار أحدث من هذا البرنامج</translation>
        </message>
        <message>
            <source>it is not an ordinary file</source>
            <comment>told.no_file</comment>
            <translation>ليس ملفًا عاديًا</translation>
        </message>
        <message>
            <source>{path}: the folder can't be made ({why})</source>
            <comment>told.no_folder</comment>
            <translation>{path}: لا يمكن إنشاء المجلد ({why})</translation>
        </message>
        <message>
            <source>no file can have such a name</source>
            <comment>told.no_name</comment>
            <translation>لا يمكن أن يكون لملف مثل هذا الاسم</translation>
        </message>
        <message>
            <source>{path}: can't be written ({why}); choose another place</source>
            <comment>told.no_place</comment>
            <translation>{path}: لا تمكن الكتابة فيه ({why})؛ اختر مكانًا آخر</translation>
        </message>
        <message>
            <source>this account has no right to it</source>
            <comment>told.no_right</comment>
            <translation>هذا الحساب لا يملك الحق في ذلك</translation>
        </message>
        <message>
            <source>something else lies in it</source>
            <comment>told.not_empty</comment>
            <translation>فيه أشياء أخرى</translation>
        </message>
        <message>
            <source>{path}: can't be written to, nothing was taken in ({why})</source>
            <comment>told.not_taken_in</comment>
            <translation>{path}: لا تمكن الكتابة فيه، ولم يُستلم شيء ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be written to, nothing was taken in ({why}); make room or choose another folder</source>
            <comment>told.not_taken_in.room</comment>
            <translation>{path}: لا تمكن الكتابة فيه، ولم يُستلم شيء ({why})؛ أفسح مكانًا أو اختر مجلدًا آخر</translation>
        </message>
        <message>
            <source>it is not there</source>
            <comment>told.not_there</comment>
            <translation>غير موجود</translation>
        </message>
        <message>
            <source>{path}: the note was not saved ({why})</source>
            <comment>told.note</comment>
            <translation>{path}: لم تُحفظ الملاحظة ({why})</translation>
        </message>
        <message>
            <source>nothing is being measured</source>
            <comment>told.nothing</comment>
            <translation>لا يُقاس شيء</translation>
        </message>
        <message>
            <source>the pictures of the other steps are gone; do the whole set-up</source>
            <comment>told.pictures_gone</comment>
            <translation>لم تعد صور الخطوات الأخرى موجودة؛ قم بالإعداد كله</translation>
        </message>
        <message>
            <source>nothing can be changed there, only read</source>
            <comment>told.read_only</comment>
            <translation>لا يمكن تغيير شيء هناك، بل القراءة فقط</translation>
        </message>
        <message>
            <source>a record could not be written</source>
            <comment>told.record_lost</comment>
            <translation>لم تمكن كتابة أحد السطور</translation>
        </message>
        <message>
            <source>Body, sitting</source>
            <comment>told.stage_body</comment>
            <translation>الجسم، مع الجلوس</translation>
        </message>
        <message>
            <source>Eyes and head, sitting</source>
            <comment>told.stage_eyes</comment>
            <translation>العينان والرأس، مع الجلوس</translation>
        </message>
        <message>
            <source>Standing, firm floor</source>
            <comment>told.stage_firm</comment>
            <translation>الوقوف على أرض ثابتة</translation>
        </message>
        <message>
            <source>Standing, soft surface</source>
            <comment>told.stage_soft</comment>
            <translation>الوقوف على سطح لين</translation>
        </message>
        <message>
            <source>Walking</source>
            <comment>told.stage_walking</comment>
            <translation>المشي</translation>
        </message>
        <message>
            <source>it is too large</source>
            <comment>told.too_large</comment>
            <translation>كبير جدًا</translation>
        </message>
        <message>
            <source>{path}: can't be deleted ({why})</source>
            <comment>told.undeleted</comment>
            <translation>{path}: لا يمكن حذفه ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be read ({why})</source>
            <comment>told.unread</comment>
            <translation>{path}: لا تمكن قراءته ({why})</translation>
        </message>
        <message>
            <source>the folder can't be read ({why})</source>
            <comment>told.unread.folder</comment>
            <translation>لا يمكن قراءة المجلد ({why})</translation>
        </message>
        <message>
            <source>can't be read ({why})</source>
            <comment>told.unread.short</comment>
            <translation>لا تمكن قراءته ({why})</translation>
        </message>
        <message>
            <source>the set-up could not be used ({why})</source>
            <comment>told.unusable</comment>
            <translation>لم يمكن استخدام الإعداد ({why})</translation>
        </message>
        <message>
            <source>{path}: can't be written ({why})</source>
            <comment>told.unwritten</comment>
            <translation>{path}: لا تمكن الكتابة فيه ({why})</translation>
        </message>
        <message>
            <source>{path}: is in use by another window; close that first</source>
            <comment>told.window</comment>
            <translation>{path}: تستخدمه نافذة أخرى؛ أغلقها أولًا</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>tools.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>For therapists: baseline together</source>
            <comment>tools.baseline</comment>
            <translation>للمعالجين: قياس مرجعي معًا</translation>
        </message>
        <message>
            <source>For therapists: plan</source>
            <comment>tools.edit</comment>
            <translation>للمعالجين: الخطة</translation>
        </message>
        <message>
            <source>Measure the camera</source>
            <comment>tools.lens</comment>
            <translation>قياس الكاميرا</translation>
        </message>
        <message>
            <source>Camera, screen, more</source>
            <comment>tools.open</comment>
            <translation>الكاميرا والشاشة وغيرهما</translation>
        </message>
        <message>
            <source>For therapists: review sessions</source>
            <comment>tools.review</comment>
            <translation>للمعالجين: مراجعة الجلسات</translation>
        </message>
        <message>
            <source>Choose the folder with the sessions</source>
            <comment>tools.review.folder</comment>
            <translation>اختر المجلد الذي فيه الجلسات</translation>
        </message>
        <message>
            <source>Measure the screen</source>
            <comment>tools.screen</comment>
            <translation>قياس الشاشة</translation>
        </message>
        <message>
            <source>Camera, screen, and what else there is</source>
            <comment>tools.title</comment>
            <translation>الكاميرا والشاشة وما يوجد غيرهما</translation>
        </message>
        <message>
            <source>Two measures make your figures more exact. You take them once. Without them usual values are taken, and your results say so.</source>
            <comment>tools.why</comment>
            <translation>قياسان يجعلان أرقامك أدق. تأخذهما مرة واحدة. من دونهما تُستخدم قيم معتادة، وتذكر نتائجك ذلك.</translation>
        </message>
        <message>
            <source>Back</source>
            <comment>trouble.back</comment>
            <translation>رجوع</translation>
        </message>
        <message>
            <source>Another program is using the camera.</source>
            <comment>trouble.busy</comment>
            <translation>برنامج آخر يستخدم الكاميرا.</translation>
        </message>
        <message>
            <source>Close the other program. In a video call, switch your video off there and share this window. To stand you then need a helper in the room, or a second device that shows you.</source>
            <comment>trouble.busy.do</comment>
            <translation>أغلق البرنامج الآخر. وفي مكالمة الفيديو، أوقف الفيديو هناك وشارك هذه النافذة. وللوقوف تحتاج عندئذ إلى شخص يساعدك في الغرفة، أو إلى جهاز ثانٍ يُظهرك.</translation>
        </message>
        <message>
            <source>Use the sample clip</source>
            <comment>trouble.demo</comment>
            <translation>استخدم مقطع المثال</translation>
        </message>
        <message>
            <source>The camera can't be used.</source>
            <comment>trouble.failed</comment>
            <translation>لا يمكن استخدام الكاميرا.</translation>
        </message>
        <message>
            <source>If it stays so, run "turnpost doctor" with a helper.</source>
            <comment>trouble.failed.do</comment>
            <translation>إذا بقي الأمر كذلك، شغّل الأمر «turnpost doctor» مع شخص يساعدك.</translation>
        </message>
        <message>
            <source>Try again. If it stays so, run "turnpost doctor" with a helper.</source>
            <comment>trouble.failed.do.retry</comment>
            <translation>حاول مرة أخرى. إذا بقي الأمر كذلك، شغّل الأمر «turnpost doctor» مع شخص يساعدك.</translation>
        </message>
        <message>
            <source>The camera does not answer.</source>
            <comment>trouble.hanging</comment>
            <translation>الكاميرا لا تستجيب.</translation>
        </message>
        <message>
            <source>Wait a moment. If nothing comes, unplug it or restart the computer.</source>
            <comment>trouble.hanging.do</comment>
            <translation>انتظر لحظة. إذا لم يأتِ شيء، افصلها أو أعد تشغيل الحاسوب.</translation>
        </message>
        <message>
            <source>No camera was found.</source>
            <comment>trouble.no_camera</comment>
            <translation>لم توجد أي كاميرا.</translation>
        </message>
        <message>
            <source>Plug a camera in, or open its cover or switch.</source>
            <comment>trouble.no_camera.do</comment>
            <translation>صِل كاميرا، أو افتح غطاءها أو مفتاحها.</translation>
        </message>
        <message>
            <source>Plug a camera in, or open its cover or switch, then try again.</source>
            <comment>trouble.no_camera.do.retry</comment>
            <translation>صِل كاميرا، أو افتح غطاءها أو مفتاحها، ثم حاول مرة أخرى.</translation>
        </message>
        <message>
            <source>Turnpost may not use the camera.</source>
            <comment>trouble.no_permission</comment>
            <translation>لا يُسمح لبرنامج Turnpost باستخدام الكاميرا.</translation>
        </message>
        <message>
            <source>Allow the camera in the settings of your computer under Privacy.</source>
            <comment>trouble.no_permission.do</comment>
            <translation>اسمح بالكاميرا في إعدادات حاسوبك ضمن «الخصوصية».</translation>
        </message>
        <message>
            <source>Allow the camera in the settings of your computer under Privacy, then try again.</source>
            <comment>trouble.no_permission.do.retry</comment>
            <translation>اسمح بالكاميرا في إعدادات حاسوبك ضمن «الخصوصية»، ثم حاول مرة أخرى.</translation>
        </message>
        <message>
            <source>The camera gives no picture. Perhaps another program is using it.</source>
            <comment>trouble.perhaps_busy</comment>
            <translation>لا تعطي الكاميرا صورة. ربما يستخدمها برنامج آخر.</translation>
        </message>
        <message>
            <source>Close the other program. In a call, switch your video off there and share this window. To stand you then need a helper, or a second device. If it is not that, open the camera's cover, or allow it under Privacy.</source>
            <comment>trouble.perhaps_busy.do</comment>
            <translation>أغلق البرنامج الآخر. وفي مكالمة الفيديو، أوقف الفيديو هناك وشارك هذه النافذة. وللوقوف تحتاج عندئذ إلى مساعد أو إلى جهاز ثانٍ. وإلا فافتح غطاء الكاميرا، أو اسمح بها ضمن الخصوصية.</translation>
        </message>
        <message>
            <source>The camera gives no picture. Perhaps Turnpost may not use it.</source>
            <comment>trouble.perhaps_forbidden</comment>
            <translation>لا تعطي الكاميرا صورة. ربما لا يُسمح لبرنامج Turnpost باستخدامها.</translation>
        </message>
        <message>
            <source>Allow the camera in the settings under Privacy. If it is allowed, open its cover, or close other programs.</source>
            <comment>trouble.perhaps_forbidden.do</comment>
            <translation>اسمح بالكاميرا في الإعدادات ضمن «الخصوصية». وإن كانت مسموحًا بها، فافتح غطاءها أو أغلق البرامج الأخرى.</translation>
        </message>
        <message>
            <source>It starts to measure again.</source>
            <comment>trouble.restarting</comment>
            <translation>القياس يبدأ من جديد.</translation>
        </message>
        <message>
            <source>Wait a moment. You need do nothing.</source>
            <comment>trouble.restarting.do</comment>
            <translation>انتظر لحظة. لا يلزمك فعل شيء.</translation>
        </message>
        <message>
            <source>Try again</source>
            <comment>trouble.retry</comment>
            <translation>حاول مرة أخرى</translation>
        </message>
        <message>
            <source>No picture comes from the camera.</source>
            <comment>trouble.silent</comment>
            <translation>لا تصل أي صورة من الكاميرا.</translation>
        </message>
        <message>
            <source>Wait a moment: Turnpost tries again by itself.</source>
            <comment>trouble.silent.do</comment>
            <translation>انتظر لحظة: يحاول Turnpost مرة أخرى من تلقاء نفسه.</translation>
        </message>
        <message>
            <source>The camera has been unplugged.</source>
            <comment>trouble.unplugged</comment>
            <translation>فُصلت الكاميرا.</translation>
        </message>
        <message>
            <source>Plug it in again.</source>
            <comment>trouble.unplugged.do</comment>
            <translation>صِلها من جديد.</translation>
        </message>
        <message>
            <source>Plug it in again, then try again.</source>
            <comment>trouble.unplugged.do.retry</comment>
            <translation>صِلها من جديد، ثم حاول مرة أخرى.</translation>
        </message>
        <message>
            <source>which arm you use, if it is out of sight</source>
            <comment>unmeasured.arm</comment>
            <translation>أي ذراع تستخدم، إذا كانت لا تُرى</translation>
        </message>
        <message>
            <source>how clear the target is to you</source>
            <comment>unmeasured.blur_of_target</comment>
            <translation>مدى وضوح الهدف لك</translation>
        </message>
        <message>
            <source>how high your chair is</source>
            <comment>unmeasured.chair</comment>
            <translation>ارتفاع كرسيك</translation>
        </message>
        <message>
            <source>The camera does not count this. Count for yourself.</source>
            <comment>unmeasured.count</comment>
            <translation>الكاميرا لا تعدّ هذا. عُدّ بنفسك.</translation>
        </message>
        <message>
            <source>which way your shoulders roll</source>
            <comment>unmeasured.direction</comment>
            <translation>اتجاه دوران كتفيك</translation>
        </message>
        <message>
            <source>if you see two tips</source>
            <comment>unmeasured.double_image</comment>
            <translation>هل ترى طرفين</translation>
        </message>
        <message>
            <source>The camera measures nothing here. You are led by voice.</source>
            <comment>unmeasured.everything</comment>
            <translation>لا تقيس الكاميرا شيئًا هنا. يقودك الصوت.</translation>
        </message>
        <message>
            <source>if your eyes follow the ball</source>
            <comment>unmeasured.eyes_follow</comment>
            <translation>هل تتبع عيناك الكرة</translation>
        </message>
        <message>
            <source>the moment your eyes open</source>
            <comment>unmeasured.eyes_opened</comment>
            <translation>لحظة انفتاح عينيك</translation>
        </message>
        <message>
            <source>your feet</source>
            <comment>unmeasured.feet</comment>
            <translation>قدماك</translation>
        </message>
        <message>
            <source>your eyes while you bend</source>
            <comment>unmeasured.gaze_bent</comment>
            <translation>عيناك وأنت منحنٍ</translation>
        </message>
        <message>
            <source>where your eyes point when they are shut</source>
            <comment>unmeasured.gaze_eyes_shut</comment>
            <translation>إلى أين تتجه عيناك وهما مغمضتان</translation>
        </message>
        <message>
            <source>eyes that stop short of the target</source>
            <comment>unmeasured.gaze_short</comment>
            <translation>عينان تتوقفان قبل الهدف</translation>
        </message>
        <message>
            <source>your hand</source>
            <comment>unmeasured.hand</comment>
            <translation>يدك</translation>
        </message>
        <message>
            <source>how near your finger really comes</source>
            <comment>unmeasured.hand_place</comment>
            <translation>كم يقترب إصبعك حقًا</translation>
        </message>
        <message>
            <source>a target in your hand</source>
            <comment>unmeasured.hand_target</comment>
            <translation>هدف في يدك</translation>
        </message>
        <message>
            <source>your hands</source>
            <comment>unmeasured.hands</comment>
            <translation>يداك</translation>
        </message>
        <message>
            <source>if you bend at the hips</source>
            <comment>unmeasured.hip_bend</comment>
            <translation>هل تنحني عند الوركين</translation>
        </message>
        <message>
            <source>the ball itself</source>
            <comment>unmeasured.object</comment>
            <translation>الكرة نفسها</translation>
        </message>
        <message>
            <source>how fast your eyes jump</source>
            <comment>unmeasured.peak_speed_of_eyes</comment>
            <translation>سرعة قفز عينيك</translation>
        </message>
        <message>
            <source>how far your eyes go up and down</source>
            <comment>unmeasured.reach_vertical</comment>
            <translation>مدى حركة عينيك إلى أعلى وأسفل</translation>
        </message>
        <message>
            <source>how high your shoulders go</source>
            <comment>unmeasured.shoulder_height</comment>
            <translation>مدى ارتفاع كتفيك</translation>
        </message>
        <message>
            <source>small jumps of your eyes</source>
            <comment>unmeasured.small_jumps</comment>
            <translation>قفزات صغيرة لعينيك</translation>
        </message>
        <message>
            <source>if you hold on</source>
            <comment>unmeasured.steadied</comment>
            <translation>هل تمسك بشيء</translation>
        </message>
        <message>
            <source>how far your eyes turn in</source>
            <comment>unmeasured.vergence</comment>
            <translation>كم تلتفّ عيناك إلى الداخل</translation>
        </message>
        <message>
            <source>It is too bright. Turn the light a little aside.</source>
            <comment>verdict.bright</comment>
            <translation>الضوء قوي جدًا. أدر الضوء قليلًا إلى الجانب.</translation>
        </message>
        <message>
            <source>It is dark. Put more light in front of you.</source>
            <comment>verdict.dark</comment>
            <translation>المكان مظلم. ضع ضوءًا أكثر أمامك.</translation>
        </message>
        <message>
            <source>You are far away. Come a hand closer.</source>
            <comment>verdict.far</comment>
            <translation>أنت بعيد. اقترب بقدر كف اليد.</translation>
        </message>
        <message>
            <source>Good. Your face is well lit and near enough.</source>
            <comment>verdict.good</comment>
            <translation>جيد. وجهك مضاء جيدًا وقريب بما يكفي.</translation>
        </message>
        <message>
            <source>You are very near. Move back by a hand.</source>
            <comment>verdict.near</comment>
            <translation>أنت قريب جدًا. ابتعد بقدر كف اليد.</translation>
        </message>
        <message>
            <source>Your face is not in the picture. Face the screen, in front of its camera.</source>
            <comment>verdict.no_face</comment>
            <translation>وجهك ليس في الصورة. واجه الشاشة، أمام الكاميرا.</translation>
        </message>
        <message>
            <source>Getting the camera ready. This can take half a minute.</source>
            <comment>verdict.opening</comment>
            <translation>يجري تجهيز الكاميرا. قد يستغرق ذلك نصف دقيقة.</translation>
        </message>
        <message>
            <source>The camera is slow. More light may help.</source>
            <comment>verdict.slow</comment>
            <translation>الكاميرا بطيئة. قد يساعد مزيد من الضوء.</translation>
        </message>
        <message>
            <source>The voice can't be heard any more. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.failed</comment>
            <translation>لم يعد الصوت المتكلم يُسمع. تقودك النقرات والكلمات على الشاشة.</translation>
        </message>
        <message>
            <source>This computer has no voice. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.no_engine</comment>
            <translation>ليس في هذا الحاسوب صوت متكلم. تقودك النقرات والكلمات على الشاشة.</translation>
        </message>
        <message>
            <source>This computer has no voice for your language. Beats and the words on the screen lead you.</source>
            <comment>voice.lack.no_language</comment>
            <translation>ليس في هذا الحاسوب صوت متكلم بلغتك. تقودك النقرات والكلمات على الشاشة.</translation>
        </message>
        <message>
            <source>en</source>
            <comment>voice.language</comment>
            <translation>ar</translation>
        </message>
        <message>
            <source>Higher than the camera: {cm} cm.</source>
            <comment>wall.above</comment>
            <translation>أعلى من الكاميرا: {cm} سم.</translation>
        </message>
        <message>
            <source>Neither to the left nor to the right of it.</source>
            <comment>wall.ahead</comment>
            <translation>لا إلى يسارها ولا إلى يمينها.</translation>
        </message>
        <message>
            <source>From note to note: {cm} cm.</source>
            <comment>wall.apart</comment>
            <translation>من ورقة إلى ورقة: {cm} سم.</translation>
        </message>
        <message>
            <source>From your eyes straight to the wall: {cm} cm.</source>
            <comment>wall.away</comment>
            <translation>من عينيك مباشرة إلى الجدار: {cm} سم.</translation>
        </message>
        <message>
            <source>Lower than the camera: {cm} cm.</source>
            <comment>wall.below</comment>
            <translation>أخفض من الكاميرا: {cm} سم.</translation>
        </message>
        <message>
            <source>To the left of the camera: {cm} cm.</source>
            <comment>wall.left</comment>
            <translation>إلى يسار الكاميرا: {cm} سم.</translation>
        </message>
        <message>
            <source>As high as the camera.</source>
            <comment>wall.level</comment>
            <translation>بارتفاع الكاميرا.</translation>
        </message>
        <message>
            <source>The camera is midway between them.</source>
            <comment>wall.middle</comment>
            <translation>الكاميرا في المنتصف بينهما.</translation>
        </message>
        <message>
            <source>Stick one note on the wall behind the screen.</source>
            <comment>wall.one</comment>
            <translation>ألصق ورقة على الجدار خلف الشاشة.</translation>
        </message>
        <message>
            <source>To the right of the camera: {cm} cm.</source>
            <comment>wall.right</comment>
            <translation>إلى يمين الكاميرا: {cm} سم.</translation>
        </message>
        <message>
            <source>Stick two notes on the wall behind the screen, side by side.</source>
            <comment>wall.two</comment>
            <translation>ألصق ورقتين على الجدار خلف الشاشة، إحداهما بجانب الأخرى.</translation>
        </message>
        <message>
            <source>Stick two notes on the wall behind the screen, one above the other. How high they hang is measured from the place midway between them.</source>
            <comment>wall.two_up</comment>
            <translation>ألصق ورقتين على الجدار خلف الشاشة، إحداهما فوق الأخرى. يُقاس ارتفاعهما من المنتصف بينهما.</translation>
        </message>
        <message>
            <source>Before you begin</source>
            <comment>welcome.safe</comment>
            <translation>قبل أن تبدأ</translation>
        </message>
        <message>
            <source>Turn on the camera</source>
            <comment>welcome.start</comment>
            <translation>تشغيل الكاميرا</translation>
        </message>
        <message>
            <source>Start the sample</source>
            <comment>welcome.start_demo</comment>
            <translation>بدء المثال</translation>
        </message>
        <message>
            <source>Time for your exercises</source>
            <comment>welcome.title</comment>
            <translation>حان وقت تمارينك</translation>
        </message>
        <message>
            <source>Turnpost watches through the camera while you do the exercises that your therapist has given you. It counts, keeps the beat, and tells you when something is off.</source>
            <comment>welcome.what</comment>
            <translation>يتابعك Turnpost عبر الكاميرا وأنت تؤدي التمارين التي أعطاك إياها معالجك. يعدّ، ويحفظ الإيقاع، وينبهك عندما لا يسير شيء كما يجب.</translation>
        </message>
        <message>
            <source>A short sample clip takes the place of the camera. You see what a person at home would see: the set-up, an exercise, and the summary.</source>
            <comment>welcome.what_demo</comment>
            <translation>يحل مقطع مثال قصير محل الكاميرا. ترى ما يراه الشخص في بيته: الإعداد، ثم تمرينًا، ثم الملخص.</translation>
        </message>
    </context>
</TS>
