package org.honorsdue.service.fact;

/** One fact about the soldier, with what it rests on. A new kind of fact is a new record here. */
public sealed interface ServiceFact
        permits ArmFact,
                Assault,
                Assignment,
                AwardClaim,
                AwardOrder,
                BirthDate,
                CampaignClaim,
                Captivity,
                Component,
                Conduct,
                Death,
                Dependents,
                HospitalAdmission,
                LapelButton,
                MilitaryGrade,
                MusteringOutPay,
                NoneTyped,
                OrderCited,
                OverseasStay,
                PersonName,
                PointsScore,
                PriorService,
                Qualification,
                School,
                SeparationReason,
                ServiceTotal,
                SexFact,
                Specialty,
                Statement,
                Station,
                Tour,
                UnitCredit,
                Wound {
    Basis basis();
}
